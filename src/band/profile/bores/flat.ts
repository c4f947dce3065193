/** A cylindrical bore. */

import type { FlatBoreSpec } from "../../../design/profile/bores/flat.js";
import { type BoreForm, unchanged } from "../form.js";

export const flatBore: BoreForm<FlatBoreSpec> = {
  grown: unchanged,
  sketch({ edge }, { halfWidth, boreRadius }) {
    return {
      link: { segment: { kind: "line", from: [-halfWidth, boreRadius], to: [halfWidth, boreRadius] }, round: edge },
      radiusAt: () => boreRadius,
    };
  },
};
