/**
 * A comfort bore: its fields.
 */
import { z } from "zod";
import { EDGE_DEFAULT } from "../../../design/profile/limits.js";

/** Rise in mm: common practice, no source. */
const COMFORT_BORE_DEFAULTS = { rise: 0.2, edge: EDGE_DEFAULT } as const;

export const comfortBoreSchema = z
  .strictObject({
    form: z.literal("comfort"),
    rise: z
      .number()
      .min(0)
      .default(COMFORT_BORE_DEFAULTS.rise)
      .describe("How much larger the bore's radius is at the edges, mm, 0 or more; default 0.2."),
    edge: z
      .number()
      .min(0)
      .default(COMFORT_BORE_DEFAULTS.edge)
      .describe("Radius of the rounded inner edges, mm, 0 (sharp) or more; default 0.2."),
  })
  .describe("A bore that curves away from the finger towards its edges; narrowest in the middle.");

export type ComfortBoreSpec = z.output<typeof comfortBoreSchema>;
