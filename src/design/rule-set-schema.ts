/**
 * A rule set of the caller's own, in place of a built-in one.
 */
import { z } from "zod";
import { generalCasting } from "./rules/general-casting.js";
import { RULE_NAMES, type RuleName, type RuleSet, STONE_RULES } from "./rules/rule-set.js";

/** As in `Certainty`. */
const CERTAINTIES = [
  "standard",
  "one credible source",
  "weak",
  "computed",
  "memory",
  "own",
  "common practice",
] as const;

const limitSchema = z.strictObject({
  limit: z.number().min(0).describe("in the rule's unit, 0 or more"),
  severity: z.enum(["error", "warning", "note"]).describe("an error makes annulet check fail"),
  source: z.string().describe("where it comes from"),
  certainty: z.enum(CERTAINTIES).describe("how sure its source is"),
});

/** Rules of stones may be left out: they are then the default set's. */
const limits = Object.fromEntries(
  RULE_NAMES.map((rule) => {
    const isOfStones = STONE_RULES.some((one) => one === rule);
    return [rule, isOfStones ? limitSchema.default(generalCasting.limits[rule]) : limitSchema];
  }),
);

export const ruleSetSchema: z.ZodType<RuleSet> = z.strictObject({
  name: z.string().min(1).describe("small letters and hyphens"),
  summary: z.string().describe("one line"),
  limits: z.strictObject(limits as Record<RuleName, typeof limitSchema>).describe("the limit of every rule"),
});
