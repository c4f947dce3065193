/**
 * A bead setting: the stone sunk into the metal and held by grains that are raised beside it.
 */
import { z } from "zod";
import { settingFields } from "../ready.js";

/** Four grains a stone: common practice, no source. A grain of a quarter of the stone's width: chosen. */
const BEAD_SET_DEFAULTS = { grains: 4, grain: 0.25, shared: true, border: 0 } as const;

export const beadSetSchema = z.strictObject({
  form: z.literal("bead-set"),
  ...settingFields,
  grains: z.int().min(2).max(4).default(BEAD_SET_DEFAULTS.grains).describe("grains a stone, 2 to 4; default 4"),
  grain: z
    .number()
    .min(0.1)
    .max(0.5)
    .default(BEAD_SET_DEFAULTS.grain)
    .describe("diameter of a grain, share of the stone's width, 0.1 to 0.5; default 0.25"),
  shared: z.boolean().default(BEAD_SET_DEFAULTS.shared).describe("whether neighbours share grains; default true"),
  border: z
    .number()
    .min(0)
    .max(3)
    .default(BEAD_SET_DEFAULTS.border)
    .describe("width of the bright cut beside the stones, mm, 0 to 3; 0 for none; default 0"),
});

export type BeadSetSpec = z.output<typeof beadSetSchema>;
