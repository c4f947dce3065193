/** A comfort bore: a circular arc, narrowest in the middle. */
import { z } from "zod";
import { arcBySagitta } from "../../../base/math/curve.js";
import type { BoreForm } from "../form.js";
import { EDGE_DEFAULT } from "../limits.js";
import { Misfit } from "../misfit.js";

/** Rise in mm: common practice, no source. */
export const COMFORT_BORE_DEFAULTS = { rise: 0.2, edge: EDGE_DEFAULT } as const;

export const comfortBoreSchema = z
  .strictObject({
    form: z.literal("comfort"),
    rise: z
      .number()
      .min(0)
      .default(COMFORT_BORE_DEFAULTS.rise)
      .describe("By how much the bore's radius is larger at the edges than in the middle, mm, 0 or more; default 0.2."),
    edge: z
      .number()
      .min(0)
      .default(COMFORT_BORE_DEFAULTS.edge)
      .describe("Radius of the rounded inner edges, mm, 0 (sharp) or more; default 0.2."),
  })
  .describe("A bore that curves away from the finger towards its edges; narrowest in the middle.");

export type ComfortBoreSpec = z.output<typeof comfortBoreSchema>;

export const comfortBore: BoreForm<ComfortBoreSpec> = {
  sketch({ rise, edge }, { halfWidth, boreRadius }) {
    if (rise > halfWidth) {
      throw new Misfit("rise-too-large", "the bore rises more than half the band's width", ["bore.rise"]);
    }
    const ends = boreRadius + rise;
    const segment = arcBySagitta([-halfWidth, ends], [halfWidth, ends], rise);
    return {
      link: { segment, round: edge },
      radiusAt: (w) =>
        segment.kind === "line" ? ends : segment.centre[1] - Math.sqrt(Math.max(segment.radius ** 2 - w * w, 0)),
      thins: "rise",
    };
  },
};
