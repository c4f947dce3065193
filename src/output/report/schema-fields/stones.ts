/**
 * What the report says of stones.
 */
import { z } from "zod";
import { CUT_NAMES } from "../../../gems/stone.js";
import { mm } from "./numbers.js";

const carats = z.number().describe("weight by the published formula, carats");

const size = z.strictObject({
  length: mm("length, to a hundredth"),
  width: mm("width, to a hundredth"),
  count: z.int().describe("stones of this size"),
  carats: carats.describe("of all of them, carats"),
});

const choice = z.strictObject({
  count: z.int().describe("stones in the row"),
  gap: z.number().nullable().describe("clear gap between girdles in space, mm; null of a single stone"),
  made: z.boolean().describe("whether it is the one that is made"),
});

const row = z.strictObject({
  rows: z.int().describe("how many such rows there are"),
  length: mm("length in space: all round, or from the first stone's middle to the last one's"),
  closed: z.boolean().describe("whether it goes round into itself"),
  choices: z.array(choice).describe("with a stone fewer, as made, with one more; those that do not fit are left out"),
});

const group = z.strictObject({
  name: z.string().describe("name of the group"),
  path: z.string().describe("where it stands in the document"),
  cut: z.enum(CUT_NAMES).describe("shape of the stones"),
  gem: z.string().describe("symbol of the gem"),
  setting: z.string().describe("form of the setting"),
  count: z.int().describe("stones of the group"),
  carats,
  grams: z.number().describe("the same in g"),
  sizes: z.array(size).describe("by size, the largest first"),
  rows: z.array(row).describe("its rows, those that came out alike once; empty where the stones stand in none"),
  left: z.int().describe("stones left out, as they would reach beyond the pattern's end or the seat's edge"),
});

export const stones = z.strictObject({
  groups: z.array(group).describe("every group of the document"),
  count: z.int().describe("stones of the ring"),
  carats,
  grams: z.number().describe("the same in g"),
});
