/**
 * The variants of a plan with what is known of each before it is made: nothing is written.
 */
import type { FileSource } from "../../base/files.js";
import { planRange } from "../figures/plan-range.js";
import type { PlannedVariant } from "../figures/plan-variant.js";
import { openPlan } from "./open-plan.js";

export interface ExpandOptions {
  /** The files that plan and designs name: base, tables, drawings. Default none. */
  readonly files?: FileSource | undefined;
  readonly signal?: AbortSignal | undefined;
}

/**
 * Yields each variant when it is asked for: planned with its design, left out with the reason, or at fault with what is wrong.
 *
 * @param plan the plan as an object, or as JSON text
 * @throws AnnuletError with everything that is wrong with the plan, `too-many-variants` with their number; the signal's reason
 *
 * @example
 * for await (const variant of expandPlan({ range: 1, base: document, vary: [{ material: ["ag925", "au750-yellow"] }] })) {
 *   if (variant.kind === "planned") console.log(variant.name, variant.figures.weight); // g
 * }
 */
export async function* expandPlan(
  plan: unknown,
  { files = {}, signal }: ExpandOptions = {},
): AsyncGenerator<PlannedVariant, void, void> {
  const open = await openPlan(plan, files, signal);
  yield* planRange(open, { files, signal });
}
