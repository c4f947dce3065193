/**
 * Numbers from one to another in even steps, each made when it is asked for.
 */
import { AnnuletError } from "../../base/errors.js";

export interface NumberSteps {
  readonly from: number;
  readonly to: number;
  /** Above 0. */
  readonly step: number;
}

/** Decimals that are kept, so that 0.1 + 0.2 is 0.3: a nanometre, far below what any value means. */
const DECIMALS = 9;

/** A step that ends this much short of the last value, in steps, still reaches it: rounding errors. */
const SLACK = 1e-6;

/**
 * How many there are. Infinite where they cannot be counted.
 *
 * @throws AnnuletError `value-invalid` where they run backwards
 */
export function countSteps({ from, to, step }: NumberSteps, path: string): number {
  if (from > to) {
    const message = `it runs from ${from} to ${to}, backwards`;
    throw new AnnuletError({ code: "value-invalid", message, path, value: from, hint: "begin with the smaller one" });
  }
  return Math.floor((to - from) / step + SLACK) + 1;
}

export function numberAt({ from, step }: NumberSteps, index: number): number {
  return Number((from + index * step).toFixed(DECIMALS));
}
