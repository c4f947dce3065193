/**
 * Reads a plan, from JSON text or from a plain object, and says everything that is wrong with it at once.
 */
import { AnnuletError } from "../../base/errors.js";
import { explain } from "../../design/explain-problems.js";
import { copyPlain, isPlainObject, type Plain } from "../../design/plain.js";
import { readText } from "../../design/text.js";
import { type Plan, planSchema } from "./plan-schema.js";

/** Most problems that one error lists. */
const MOST_PROBLEMS = 100;

/**
 * The plan with its defaults.
 *
 * @param source JSON text, whose errors have line and column; or the plan itself
 * @throws AnnuletError with all problems: `json-malformed`, `duplicate-key`, `document-too-large`, `unknown-key`,
 * `value-missing`, `value-invalid`
 */
export function readPlan(source: unknown): Plan {
  const { data, problems, locate } =
    typeof source === "string" ? readText(source) : { ...copyPlain(source), locate: () => undefined };
  if (!isPlainObject(data)) {
    if (problems.length > 0) throw new AnnuletError(problems);
    throw new AnnuletError({ code: "value-invalid", message: "a plan is an object", ...HEAD, ...locate([]) });
  }
  const { data: plan, error } = planSchema.safeParse(data);
  const document: Plain = data;
  const found = explain(error?.issues ?? [], { schema: planSchema, document, locate, most: MOST_PROBLEMS });
  const all = [...problems, ...found].slice(0, MOST_PROBLEMS);
  if (all.length > 0 || plan === undefined) throw new AnnuletError(all);
  return plan;
}

const HEAD = { allowed: "an object", hint: 'begin with {"range": 1, "base": "ring.json", "vary": []}' };
