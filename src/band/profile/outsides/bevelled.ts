/** A flat outside with a straight bevel on each side. */
import type { Point2 } from "../../../base/math/point.js";
import type { BevelledSpec } from "../../../design/profile/outsides/bevelled.js";
import { type OutsideForm, type OutsideLink, unchanged } from "../form.js";
import { LEAST_SEAT } from "../least-sizes.js";
import { Misfit } from "../misfit.js";

export const bevelled: OutsideForm<BevelledSpec> = {
  finished: "seat",
  grown: unchanged,
  sketch({ bevel, drop, edge }, { halfWidth, top }) {
    const half = halfWidth - bevel;
    if (2 * half < LEAST_SEAT) {
      throw new Misfit("bevel-too-wide", "the bevels leave no flat middle between them", ["outside.bevel"]);
    }
    const side = top - drop;
    const line = (from: Point2, to: Point2, seat: boolean): OutsideLink => ({
      segment: { kind: "line", from, to },
      round: edge,
      field: "edge",
      seat,
    });
    return {
      links: [
        line([halfWidth, side], [half, top], false),
        line([half, top], [-half, top], true),
        line([-half, top], [-halfWidth, side], false),
      ],
      edge,
      thins: "drop",
    };
  },
};
