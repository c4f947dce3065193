/**
 * A cylindrical bore: its fields.
 */
import { z } from "zod";
import { EDGE_DEFAULT } from "../../../design/profile/limits.js";

export const FLAT_BORE_DEFAULTS = { edge: EDGE_DEFAULT } as const;

export const flatBoreSchema = z
  .strictObject({
    form: z.literal("flat"),
    edge: z
      .number()
      .min(0)
      .default(FLAT_BORE_DEFAULTS.edge)
      .describe("Radius of its edges, mm, 0 or more; default 0.2, above the 0.125 castings need."),
  })
  .describe("A cylindrical bore.");

export type FlatBoreSpec = z.output<typeof flatBoreSchema>;
