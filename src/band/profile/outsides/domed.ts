/** A domed outside: a circular arc from side wall to side wall. */
import { z } from "zod";
import { arcBySagitta } from "../../../base/math/curve.js";
import type { OutsideForm } from "../form.js";
import { EDGE_DEFAULT } from "../limits.js";
import { Misfit } from "../misfit.js";

/** Rise in mm: common practice, no source. */
export const DOMED_DEFAULTS = { rise: 0.5, edge: EDGE_DEFAULT } as const;

export const domedSchema = z
  .strictObject({
    form: z.literal("domed"),
    rise: z
      .number()
      .min(0)
      .default(DOMED_DEFAULTS.rise)
      .describe("Height of the dome above the side walls' top, mm, 0 to half the width; default 0.5."),
    edge: z
      .number()
      .min(0)
      .default(DOMED_DEFAULTS.edge)
      .describe("Radius of the rounded outer edges, mm, 0 (sharp) or more; default 0.2."),
  })
  .describe("A dome, highest in the middle; the pattern sits on all of it between the edges.");

export type DomedSpec = z.output<typeof domedSchema>;

export const domed: OutsideForm<DomedSpec> = {
  sketch({ rise, edge }, { halfWidth, top }) {
    if (rise > halfWidth) {
      throw new Misfit("rise-too-large", "the dome rises more than half the band's width", ["outside.rise"]);
    }
    const segment = arcBySagitta([halfWidth, top - rise], [-halfWidth, top - rise], rise);
    return { links: [{ segment, round: edge, seat: true }], edge, thins: "rise" };
  },
};
