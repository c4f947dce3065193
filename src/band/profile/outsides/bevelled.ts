/** A flat outside with a straight bevel on each side. */
import { z } from "zod";
import type { Point2 } from "../../../base/math/point.js";
import type { OutsideForm, OutsideLink } from "../form.js";
import { EDGE_DEFAULT, LEAST_SEAT } from "../limits.js";
import { Misfit } from "../misfit.js";

/** Bevel and drop in mm: common practice, no source. */
export const BEVELLED_DEFAULTS = { bevel: 0.8, drop: 0.4, edge: EDGE_DEFAULT } as const;

export const bevelledSchema = z
  .strictObject({
    form: z.literal("bevelled"),
    bevel: z
      .number()
      .positive()
      .default(BEVELLED_DEFAULTS.bevel)
      .describe("Width of each bevel along the finger axis, mm, above 0 and under half the band's width; default 0.8."),
    drop: z
      .number()
      .min(0)
      .default(BEVELLED_DEFAULTS.drop)
      .describe("By how much each bevel falls towards the side wall, mm, 0 or more; default 0.4."),
    edge: z
      .number()
      .min(0)
      .default(BEVELLED_DEFAULTS.edge)
      .describe("Radius of the corners at both ends of each bevel, mm, 0 (sharp) or more; default 0.2."),
  })
  .describe("A flat middle and a bevel on each side; the pattern sits on the flat middle.");

export type BevelledSpec = z.output<typeof bevelledSchema>;

export const bevelled: OutsideForm<BevelledSpec> = {
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
