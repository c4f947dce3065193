/**
 * All variants of a plan with what is known of them, each when it is asked for.
 */
import type { FileSource } from "../../base/files.js";
import { pause } from "../../base/pause.js";
import type { OpenPlan } from "../expand/open-plan.js";
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
    const variant = open.tryVariant(number);
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
