/** Two slopes that meet in a ridge. */

import type { KnifeSpec } from "../../../design/profile/outsides/knife.js";
import { type OutsideForm, unchanged } from "../form.js";

export const knife: OutsideForm<KnifeSpec> = {
  finished: "seat",
  grown: unchanged,
  sketch({ rise, ridge, edge }, { halfWidth, top }) {
    const side = top - rise;
    return {
      links: [
        {
          segment: { kind: "line", from: [halfWidth, side], to: [0, top] },
          round: ridge,
          field: "ridge",
          seat: true,
        },
        { segment: { kind: "line", from: [0, top], to: [-halfWidth, side] }, round: edge, seat: true },
      ],
      edge,
      thins: "rise",
    };
  },
};
