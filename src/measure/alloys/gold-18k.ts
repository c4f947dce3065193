/**
 * 18 karat gold, 750 ‰.
 * Ranges: 24carat.co.uk (yellow 15.2 to 15.9, white 14.7 to 16.9) and a UK casting house's wax factors over 1.05
 * (designbuildcast.co.uk: red 15.19), widened where the tabled density lies outside them.
 */
import type { Alloy } from "./alloy.js";

/** Both print one table, so they count as one source. */
const SOURCE = "tmtpages.com, specific gravity table 4 (riogrande.com, 2019, has the same table)";

export const au750Yellow: Alloy = {
  symbol: "au750-yellow",
  name: "18 K yellow gold",
  density: 15.58,
  range: [15.2, 15.9],
  fineness: 750,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};

/** That the table's white is one with nickel is from memory: whites with palladium are heavier. */
export const au750White: Alloy = {
  symbol: "au750-white",
  name: "18 K white gold, nickel",
  density: 14.64,
  range: [14.64, 14.7],
  fineness: 750,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};

/** With 13.5 % of palladium. */
export const au750WhitePd: Alloy = {
  symbol: "au750-white-pd",
  name: "18 K white gold, palladium",
  density: 15.84,
  range: [15.84, 16.9],
  fineness: 750,
  kind: "gold",
  source: "wax factor of a UK casting house, designbuildcast.co.uk, over 1.05; range up to 24carat.co.uk",
  certainty: "one credible source",
};

export const au750Red: Alloy = {
  symbol: "au750-red",
  name: "18 K red gold",
  density: 15.18,
  range: [15.18, 15.19],
  fineness: 750,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};

export const au750Green: Alloy = {
  symbol: "au750-green",
  name: "18 K green gold",
  density: 15.9,
  fineness: 750,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};
