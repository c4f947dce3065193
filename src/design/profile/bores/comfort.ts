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
      .describe("How much wider its radius gets, mm, 0 or more; default 0.2."),
    edge: z
      .number()
      .min(0)
      .default(COMFORT_BORE_DEFAULTS.edge)
      .describe("Radius of its edges, mm, 0 or more; default 0.2."),
  })
  .describe("A bore that widens towards its edges.");

export type ComfortBoreSpec = z.output<typeof comfortBoreSchema>;
