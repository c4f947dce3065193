/**
 * The built-in rule sets. A new one is one file and one line here.
 */
import { nearest } from "../../base/errors/nearest.js";
import { AnnuletError } from "../../base/errors.js";
import { conservative } from "./conservative.js";
import { fineResinPrint } from "./fine-resin-print.js";
import { generalCasting } from "./general-casting.js";
import type { RuleSet } from "./rule-set.js";

/**
 * The rule sets that a design can be judged by, each limit in mm with its source. The first is the default.
 *
 * @example
 * const names = ruleSets.map((set) => set.name);
 * const check = await checkDesign(document, { rules: names[1], detail: "draft" });
 */
export const ruleSets: readonly RuleSet[] = [generalCasting, conservative, fineResinPrint];

/** @throws AnnuletError `rules-unknown`, naming the nearest */
export function findRuleSet(name: string, choice: readonly RuleSet[] = ruleSets): RuleSet {
  const found = choice.find((set) => set.name === name);
  if (found !== undefined) return found;
  const names = choice.map((set) => set.name);
  throw new AnnuletError({
    code: "rules-unknown",
    message: `there is no rule set ${JSON.stringify(name)}`,
    path: "rules.set",
    value: name,
    allowed: names.join(", "),
    hint: nearest(name, names),
  });
}
