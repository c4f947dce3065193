/**
 * Two slopes that meet in a ridge: their fields.
 */
import { z } from "zod";
import { EDGE_DEFAULT } from "../../../design/profile/limits.js";

/** Rise in mm: common practice, no source. Ridge as the other edges. */
const KNIFE_DEFAULTS = { rise: 0.6, ridge: EDGE_DEFAULT, edge: EDGE_DEFAULT } as const;

export const knifeSchema = z
  .strictObject({
    form: z.literal("knife"),
    rise: z
      .number()
      .min(0)
      .default(KNIFE_DEFAULTS.rise)
      .describe("Height of the ridge above the side walls, mm, 0 or more; default 0.6."),
    ridge: z
      .number()
      .min(0)
      .default(KNIFE_DEFAULTS.ridge)
      .describe("Radius of the nose, mm, 0 or more; it lowers the ridge; default 0.2."),
    edge: z.number().min(0).default(KNIFE_DEFAULTS.edge).describe("Radius of its edges, mm, 0 or more; default 0.2."),
  })
  .describe("Two slopes to a ridge, pattern on both and over the nose.");

export type KnifeSpec = z.output<typeof knifeSchema>;
