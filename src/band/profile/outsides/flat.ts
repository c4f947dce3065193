/** A cylindrical outside. */

import type { FlatOutsideSpec } from "../../../design/profile/outsides/flat.js";
import { type OutsideForm, unchanged } from "../form.js";

export const flatOutside: OutsideForm<FlatOutsideSpec> = {
  finished: "seat",
  grown: unchanged,
  sketch({ edge }, { halfWidth, top }) {
    return {
      links: [{ segment: { kind: "line", from: [halfWidth, top], to: [-halfWidth, top] }, round: edge, seat: true }],
      edge,
    };
  },
};
