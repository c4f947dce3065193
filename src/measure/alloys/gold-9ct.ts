/**
 * 9 carat gold, 375 ‰.
 * Densities: a UK casting house's wax factors over 1.05. Ranges: 24carat.co.uk, 10.9 to 12.7 for all colours; its light end
 * is taken for yellow and red and its heavy end for white (from memory: what whitens it is heavier).
 */
import type { Alloy } from "./alloy.js";

const SOURCE = "wax factor of a UK casting house, designbuildcast.co.uk, over 1.05; range from 24carat.co.uk";

/** Au 375, Ag 100, Cu 450, Zn 75 ‰, a usual composition from memory, gives 11.15 by the mixing rule. */
export const au375Yellow: Alloy = {
  symbol: "au375-yellow",
  name: "9 ct yellow gold",
  density: 11.13,
  range: [10.9, 11.15],
  fineness: 375,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};

export const au375Red: Alloy = {
  symbol: "au375-red",
  name: "9 ct red gold",
  density: 11.33,
  range: [10.9, 11.33],
  fineness: 375,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};

export const au375White: Alloy = {
  symbol: "au375-white",
  name: "9 ct white gold",
  density: 12.63,
  range: [12.63, 12.7],
  fineness: 375,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};
