/**
 * Lets a stage work, and makes an answer of what comes of it.
 */

import { canonicalText } from "../base/canonical.js";
import { AnnuletError, type Warning } from "../base/errors.js";
import { isBeyond } from "../base/limits.js";
import type { Answer, AnswerStore } from "./answer-store.js";
import type { Node } from "./plan.js";
import type { Given, Tools } from "./stage.js";

/**
 * @throws what may go well the next time: an abort, a library that cannot be loaded, a limit that was met
 */
export function attempt(
  { name, stage }: Pick<Node, "name" | "stage">,
  given: Given<never>,
  { signal, work }: Pick<Tools, "signal" | "work">,
  store: AnswerStore,
): Answer | Promise<Answer> {
  const warnings: Warning[] = [];
  const warn = (warning: Warning) => {
    warnings.push(warning);
  };
  const start = performance.now();
  const made = (value: unknown): Answer => {
    const { compare } = stage;
    const twin =
      typeof compare === "object"
        ? store.of(name).find(({ outcome }) => "value" in outcome && compare.same(outcome.value, value))
        : undefined;
    if (twin !== undefined) return twin;
    const mark = compare === "value" ? `=${canonicalText(value)}` : `#${store.serial()}`;
    return { outcome: { value }, mark, warnings, ms: performance.now() - start };
  };
  const failed = (error: unknown): Answer => {
    if (!(error instanceof AnnuletError) || signal.aborted || isBeyond(error)) throw error;
    return { outcome: { error }, mark: `#${store.serial()}`, warnings, ms: performance.now() - start };
  };
  let result: unknown;
  try {
    const remember = store.memoryOf(name).begin(() => warnings.length);
    result = stage.run(given, { warn, remember, signal, work });
  } catch (error) {
    return failed(error);
  }
  return result instanceof Promise ? result.then(made, failed) : made(result);
}
