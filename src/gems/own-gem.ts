/**
 * Gems of the user's own, by their density.
 */
import { AnnuletError } from "../base/errors.js";
import { gems } from "./catalogue.js";
import type { Gem, HeatCare, Told, UltrasonicCare } from "./gem.js";

/** What a user says of a gem. */
export interface OwnGem {
  readonly symbol: string;
  /** Default its symbol. */
  readonly name?: string | undefined;
  /** g/cm³. */
  readonly density: number;
  /** On Mohs' scale. Default not said. */
  readonly hardness?: number | undefined;
  /** Default the user's own figure. */
  readonly source?: string | undefined;
}

const UNKNOWN = { source: "not known, so nothing is risked", certainty: "own" } as const;

const NOT_CAST: Told<HeatCare> = { value: "after", ...UNKNOWN };

const NOT_BATHED: Told<UltrasonicCare> = { value: "no", ...UNKNOWN };

/**
 * The gem that a user describes. What it bears is not known, so it is taken to bear nothing.
 *
 * @param path where it stands in the document
 * @throws AnnuletError `gem-known` for the symbol of a built-in one
 */
export function ownGem({ symbol, name = symbol, density, hardness, source }: OwnGem, path = "gems"): Gem {
  if (gems.some((gem) => gem.symbol === symbol)) {
    throw new AnnuletError({
      code: "gem-known",
      message: `there is a gem ${symbol} already`,
      path: `${path}.symbol`,
      value: symbol,
      allowed: "a symbol of its own",
      hint: `call it ${symbol}-own`,
    });
  }
  const told = <Value>(value: Value): Told<Value> => ({
    value,
    source: source ?? "the design's own figure",
    certainty: "own",
  });
  const made = { symbol, name, density: told(density), heat: NOT_CAST, ultrasonic: NOT_BATHED };
  return hardness === undefined ? made : { ...made, hardness: told([hardness, hardness]) };
}
