/**
 * A flat outside with a straight bevel on each side: its fields.
 */
import { z } from "zod";
import { EDGE_DEFAULT } from "../../../design/profile/limits.js";

/** Bevel and drop in mm: common practice, no source. */
const BEVELLED_DEFAULTS = { bevel: 0.8, drop: 0.4, edge: EDGE_DEFAULT } as const;

export const bevelledSchema = z
  .strictObject({
    form: z.literal("bevelled"),
    bevel: z
      .number()
      .positive()
      .default(BEVELLED_DEFAULTS.bevel)
      .describe("Width of each bevel, mm, above 0, under half the band's; default 0.8."),
    drop: z
      .number()
      .min(0)
      .default(BEVELLED_DEFAULTS.drop)
      .describe("How far each bevel falls, mm, 0 or more; default 0.4."),
    edge: z
      .number()
      .min(0)
      .default(BEVELLED_DEFAULTS.edge)
      .describe("Radius of its corners, mm, 0 or more; default 0.2."),
  })
  .describe("A bevel on each side, pattern on the flat middle.");

export type BevelledSpec = z.output<typeof bevelledSchema>;
