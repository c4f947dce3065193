/**
 * The `rules` part of the document: the limits that `annulet check` judges by.
 */
import { z } from "zod";
import { findRuleSet, ruleSets } from "./rules/catalogue.js";
import { RULE_NAMES, RULES, type RuleLimit, type RuleSet } from "./rules/rule-set.js";

/** Largest limit, in the rule's unit: far above any. Chosen. */
const MOST = 100;

const limit = z.number().positive().max(MOST);

const severity = z.enum(["error", "warning", "note"]);

const limitSchema = z
  .union([
    limit,
    z.strictObject({
      limit: limit.optional().describe("in the rule's unit; default the set's"),
      severity: severity.optional().describe("an error makes annulet check fail; default the set's"),
      source: z.string().min(1).max(300).optional().describe("where it comes from; default the design"),
    }),
  ])
  .meta({ id: "limit" });

const names = ruleSets.map((set) => set.name);

export const rulesSchema = z.strictObject({
  set: z.enum(names).default(names[0]).describe(`rule set that limits are taken from; default ${names[0]}`),
  limits: z
    .strictObject(
      Object.fromEntries(
        RULE_NAMES.map((rule) => {
          const { what, unit, keep } = RULES[rule];
          return [rule, limitSchema.optional().describe(`${what}, ${keep}, ${unit}`)];
        }),
      ),
    )
    .default({})
    .describe("your own in place of the set's; default none"),
});

export type RulesSpec = z.output<typeof rulesSchema>;

/** The rule set that a document means, or another by name with the document's own limits. */
export function rulesOf(rules: RulesSpec | undefined, name?: string): RuleSet {
  const set = findRuleSet(name ?? rules?.set ?? names[0]);
  const own = Object.entries(rules?.limits ?? {}).flatMap(([rule, given]) =>
    given === undefined ? [] : [[rule, given] as const],
  );
  const limits = { ...set.limits };
  for (const rule of RULE_NAMES) {
    const given = own.find(([key]) => key === rule)?.[1];
    if (given !== undefined) limits[rule] = ownLimit(limits[rule], given);
  }
  return { ...set, limits };
}

function ownLimit(from: RuleLimit, given: z.output<typeof limitSchema>): RuleLimit {
  const own = typeof given === "number" ? { limit: given } : given;
  const source = own.source ?? (own.limit === undefined ? from.source : "the design's own figure");
  return {
    limit: own.limit ?? from.limit,
    severity: own.severity ?? from.severity,
    source,
    certainty: own.limit === undefined ? from.certainty : "own",
  };
}
