/**
 * A small step cut along both edges of the band, for milgrain to stand in: its fields.
 */
import { z } from "zod";

/** Width, depth and corners in mm: common practice, no source; corners as a casting house asks for, 0.125 at least. */
const STEP_DEFAULTS = { width: 0.45, depth: 0.3, edge: 0.13 } as const;

export const stepSchema = z
  .strictObject({
    width: z
      .number()
      .positive()
      .max(20)
      .default(STEP_DEFAULTS.width)
      .describe("Width of each ledge, mm, above 0, within the outside's first curve; default 0.45."),
    depth: z
      .number()
      .positive()
      .max(20)
      .default(STEP_DEFAULTS.depth)
      .describe("From the outside there, or the band's side where that is lower, down to the ledge, mm; default 0.3."),
    edge: z
      .number()
      .min(0)
      .default(STEP_DEFAULTS.edge)
      .describe("Radius of its three corners, mm; at the sides it stands for the outside's edge; default 0.13."),
  })
  .describe('A step cut along both edges, for beads "along": "step". Default: none.');

/** The step of a design, defaults filled in. */
export type StepSpec = z.output<typeof stepSchema>;
