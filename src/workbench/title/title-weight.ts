/**
 * The ring's weight and price as the title block shows them: in the metal that the design names, by its own prices.
 */
import { gramDecimals } from "../../toolbox/index.js";
import type { AnswerOf } from "../engine/answers.js";

/** Weights of a ring in every material, as far as they are shown. */
export type Weights = Pick<AnswerOf<"weights">, "rows" | "currency">;

export interface TitleWeight {
  /** Of the finished piece, g. */
  readonly grams: number;
  /** The last digit that the published densities allow. */
  readonly digits: number;
  /** Of the metal in the finished piece; undefined where the design gives no price of it. */
  readonly price: { readonly amount: number; readonly currency: string } | undefined;
}

/**
 * @param mass material → g, as the report has it: known before the weights are
 * @param weights undefined while they are worked out
 */
export function titleWeight(
  material: string,
  mass: Readonly<Record<string, number>> | undefined,
  weights: Weights | undefined,
): TitleWeight | undefined {
  const row = weights?.rows.find(({ symbol }) => symbol === material);
  const known = mass !== undefined && Object.hasOwn(mass, material) ? mass[material] : undefined;
  const grams = row?.finished ?? known;
  if (grams === undefined) return undefined;
  const span = row?.finishedRange ? row.finishedRange[1] - row.finishedRange[0] : 0;
  const price = row?.cost ? { amount: row.cost.finished, currency: weights?.currency ?? "" } : undefined;
  return { grams, digits: gramDecimals(span / 2), price };
}
