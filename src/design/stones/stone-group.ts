/**
 * A group of stones: what they are, where they stand and how they are held.
 */
import { z } from "zod";
import { CUT_NAMES } from "../../gems/stone.js";
import { proportionsSchema } from "./proportions.js";
import { settingSchema } from "./setting.js";
import { stoneLength } from "./stone-length.js";
import { stonePlaceSchema } from "./stone-place.js";
import { checkGroup } from "./stone-rules.js";

/** Most groups of stones a document may have; a chosen limit. */
const MAX_STONE_GROUPS = 200;

/** Defaults: the commonest stone. */
export const STONE_DEFAULTS = { cut: "round", gem: "diamond", through: false, edge: 0.1 } as const;

export const stoneGroupSchema = z
  .strictObject({
    name: z.string().min(1).max(100).optional().describe("in tables and messages; default stones and its number"),
    cut: z.enum(CUT_NAMES).default(STONE_DEFAULTS.cut).describe("shape of the stones; default round"),
    size: stoneLength.describe("across a round or square one, length of a long one, mm, 0.3 to 30"),
    width: stoneLength.optional().describe("of a long one, mm, 0.3 to 30; default as the cut usually has it"),
    narrow: stoneLength
      .optional()
      .describe("tapered baguette: width at its narrow end, mm, 0.3 to 30; default as it usually has it"),
    gem: z
      .string()
      .min(1)
      .max(40)
      .default(STONE_DEFAULTS.gem)
      .describe("what they are: a symbol, built in or of gems; default diamond"),
    proportions: proportionsSchema,
    place: stonePlaceSchema,
    level: z
      .number()
      .min(-5)
      .max(10)
      .optional()
      .describe("of the table over the surface, mm, -5 to 10; default as the setting needs it"),
    setting: settingSchema,
    through: z
      .union([
        z.boolean(),
        z.strictObject({
          shape: z.enum(["round", "cut"]).default("round").describe("round, or as the stone is cut; default round"),
          size: z
            .number()
            .min(0.1)
            .max(0.95)
            .optional()
            .describe("share of the stone's, 0.1 to 0.95; default the pilot's"),
          edge: z
            .number()
            .min(0)
            .max(1)
            .default(STONE_DEFAULTS.edge)
            .describe("how far its edge in the bore is broken, mm, 0 to 1; default 0.1"),
        }),
      ])
      .default(STONE_DEFAULTS.through)
      .describe("whether each is open below, into the bore, and how; default false"),
  })
  .superRefine(checkGroup);

export const stonesSchema = z
  .array(stoneGroupSchema)
  .max(MAX_STONE_GROUPS)
  .describe(`groups of stones, at most ${MAX_STONE_GROUPS}; default none`);

export type StoneGroupSpec = z.output<typeof stoneGroupSchema>;
