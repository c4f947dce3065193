/**
 * All variants of a plan with what is known of them, each when it is asked for.
 */
import { AnnuletError } from "../../base/errors.js";
import type { FileSource } from "../../base/files.js";
import { pause } from "../../base/pause.js";
import type { OpenPlan, Variant } from "../expand/open-plan.js";
import { type PlannedVariant, Planner } from "./plan-variant.js";

/** Gives way after so long, ms. Chosen. */
const GIVE_WAY_MS = 40;

/**
 * @param files that the designs name
 * @param numbers of the variants that are asked for, from 1. Default all
 * @throws the signal's reason
 */
export async function* planRange(
  open: OpenPlan,
  { files, numbers, signal }: { files: FileSource; numbers?: Iterable<number>; signal?: AbortSignal | undefined },
): AsyncGenerator<PlannedVariant, void, void> {
  const planner = new Planner(open.plan, files, signal);
  let since = performance.now();
  for (const number of numbers ?? upTo(open.count)) {
    const variant = tryVariant(open, number);
    yield "kind" in variant ? variant : await planner.plan(variant);
    if (performance.now() - since < GIVE_WAY_MS) continue;
    await pause();
    signal?.throwIfAborted();
    since = performance.now();
  }
}

function* upTo(count: number): Generator<number, void, void> {
  for (let number = 1; number <= count; number++) yield number;
}

/** A row may name a place that the others do not, so that only its own variant fails. */
function tryVariant(open: OpenPlan, number: number): Variant | Extract<PlannedVariant, { kind: "fault" }> {
  try {
    return open.variant(number);
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
    return { number, name: open.nameOf(number), shown: {}, kind: "fault", problems: error.problems };
  }
}
