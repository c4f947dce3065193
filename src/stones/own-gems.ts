/**
 * The gems that a document may name: the built-in ones, then its own.
 */
import type { OwnGemSpec } from "../design/stones/own-gems.js";
import { gems } from "../gems/catalogue.js";
import type { Gem } from "../gems/gem.js";

/** Where an own gem's figures are from that does not say it. */
const DESIGN = "the design's own figure";

/** Hardness of a gem whose own is not told, by Mohs. */
const ANY_HARDNESS = [1, 10] as const;

/** Every gem by its symbol; one of the document's own stands before a built-in one. */
export function gemsOf(own: readonly OwnGemSpec[]): ReadonlyMap<string, Gem> {
  return new Map([...gems, ...own.map(ownGem)].map((gem) => [gem.symbol, gem]));
}

function ownGem({ symbol, name = symbol, density, hardness, source = DESIGN }: OwnGemSpec): Gem {
  const told = <Value>(value: Value) => ({ value, source, certainty: "own" as const });
  return {
    symbol,
    name,
    density: told(density),
    hardness: told(hardness === undefined ? ANY_HARDNESS : ([hardness, hardness] as const)),
    // What is not known is taken with care.
    heat: told("after" as const),
    ultrasonic: told("caution" as const),
  };
}
