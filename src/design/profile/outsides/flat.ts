/**
 * A cylindrical outside: its fields.
 */
import { z } from "zod";
import { EDGE_DEFAULT } from "../../../design/profile/limits.js";

const FLAT_OUTSIDE_DEFAULTS = { edge: EDGE_DEFAULT } as const;

export const flatOutsideSchema = z
  .strictObject({
    form: z.literal("flat"),
    edge: z
      .number()
      .min(0)
      .default(FLAT_OUTSIDE_DEFAULTS.edge)
      .describe("Radius of its edges, mm, 0 or more; default 0.2."),
  })
  .describe("Cylindrical, pattern between the edges.");

export type FlatOutsideSpec = z.output<typeof flatOutsideSchema>;
