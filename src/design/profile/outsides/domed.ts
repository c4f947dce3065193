/**
 * A domed outside: its fields.
 */
import { z } from "zod";
import { EDGE_DEFAULT } from "../../../design/profile/limits.js";

/** Rise in mm: common practice, no source. */
const DOMED_DEFAULTS = { rise: 0.5, edge: EDGE_DEFAULT } as const;

export const domedSchema = z
  .strictObject({
    form: z.literal("domed"),
    rise: z
      .number()
      .min(0)
      .default(DOMED_DEFAULTS.rise)
      .describe("Height of the dome above the side walls, mm, to half the width; default 0.5."),
    edge: z.number().min(0).default(DOMED_DEFAULTS.edge).describe("Radius of its edges, mm, 0 or more; default 0.2."),
  })
  .describe("A dome, pattern between the edges.");

export type DomedSpec = z.output<typeof domedSchema>;
