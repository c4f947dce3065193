/**
 * A concave outside: its fields.
 */
import { z } from "zod";
import { EDGE_DEFAULT } from "../../../design/profile/limits.js";

/** Dip in mm: common practice, no source. */
const CONCAVE_DEFAULTS = { dip: 0.3, edge: EDGE_DEFAULT } as const;

export const concaveSchema = z
  .strictObject({
    form: z.literal("concave"),
    dip: z
      .number()
      .min(0)
      .default(CONCAVE_DEFAULTS.dip)
      .describe("How far the middle lies under the edges, mm, to half the width; default 0.3."),
    edge: z.number().min(0).default(CONCAVE_DEFAULTS.edge).describe("Radius of its edges, mm, 0 or more; default 0.2."),
  })
  .describe("A hollow, pattern between the edges.");

export type ConcaveSpec = z.output<typeof concaveSchema>;
