/**
 * The stones alone, without building the ring: how rows come out, and what to order.
 */
import type { Warn } from "../base/errors.js";
import type { FileSource } from "../base/files.js";
import type { Limits } from "../base/limits.js";
import { openInside } from "./open-ring.js";
import { planOf, type StonePlan } from "./stone-plan.js";

export interface PlanStonesOptions {
  /** Spares over what is set, a share, 0 to 10. Default 0.05. */
  readonly spares?: number | undefined;
  /** The files that the design names. Default: none. */
  readonly files?: FileSource | undefined;
  readonly limits?: Partial<Limits> | undefined;
  /** Takes the warnings. Default: they are dropped. */
  readonly warn?: Warn | undefined;
}

/**
 * Places a design's stones.
 *
 * @throws AnnuletError as `build` up to the stones
 */
export async function planStones(document: unknown, options: PlanStonesOptions = {}): Promise<StonePlan> {
  const { spares, files, limits, warn } = options;
  const { answers, warnings } = await openInside(document, { files, limits }).ask(["stones"]);
  if (warn !== undefined) for (const warning of warnings) warn(warning);
  return planOf(answers.stones, spares);
}
