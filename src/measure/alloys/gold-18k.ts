/**
 * 18 karat gold, 750 ‰.
 * Ranges: 24carat.co.uk, widened where the tabled density lies outside them.
 */
import type { Alloy } from "./alloy.js";

const SOURCE = "tmtpages.com, specific gravity table 4; riogrande.com, 2019";

export const au750Yellow: Alloy = {
  symbol: "au750-yellow",
  name: "18 K yellow gold",
  density: 15.58,
  range: [15.2, 15.9],
  fineness: 750,
  kind: "gold",
  source: SOURCE,
  certainty: "standard",
};

/** Palladium whites are heavier than nickel whites (from memory), hence the wide range: ask for the maker's figure. */
export const au750White: Alloy = {
  symbol: "au750-white",
  name: "18 K white gold",
  density: 14.64,
  range: [14.64, 16.9],
  fineness: 750,
  kind: "gold",
  source: SOURCE,
  certainty: "standard",
};

export const au750Red: Alloy = {
  symbol: "au750-red",
  name: "18 K red gold",
  density: 15.18,
  fineness: 750,
  kind: "gold",
  source: SOURCE,
  certainty: "standard",
};

export const au750Green: Alloy = {
  symbol: "au750-green",
  name: "18 K green gold",
  density: 15.9,
  fineness: 750,
  kind: "gold",
  source: SOURCE,
  certainty: "standard",
};
