/**
 * 14 karat gold, 585 ‰.
 * Ranges: 24carat.co.uk, 12.9 to 14.6 for all colours, and a UK casting house's wax factors over 1.05 (designbuildcast.co.uk):
 * yellow 13.68, white 14.24; from these the figures of each colour where it is known.
 */
import type { Alloy } from "./alloy.js";

/** Both print one table, so they count as one source. */
const SOURCE = "tmtpages.com, specific gravity table 4 (riogrande.com, 2019, has the same table)";

export const au585Yellow: Alloy = {
  symbol: "au585-yellow",
  name: "14 K yellow gold",
  density: 13.07,
  range: [12.9, 13.68],
  fineness: 585,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};

/** That the table's white is one with nickel is from memory: whites with palladium are heavier. */
export const au585White: Alloy = {
  symbol: "au585-white",
  name: "14 K white gold, nickel",
  density: 12.61,
  range: [12.61, 12.9],
  fineness: 585,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};

/** The house does not say what whitens it; that it is palladium is from memory, by the weight. */
export const au585WhitePd: Alloy = {
  symbol: "au585-white-pd",
  name: "14 K white gold, palladium",
  density: 14.24,
  range: [14.24, 14.6],
  fineness: 585,
  kind: "gold",
  source: "wax factor of a UK casting house, designbuildcast.co.uk, over 1.05; range up to 24carat.co.uk",
  certainty: "one credible source",
};

export const au585Red: Alloy = {
  symbol: "au585-red",
  name: "14 K red gold",
  density: 13.26,
  range: [12.9, 14.6],
  fineness: 585,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};

export const au585Green: Alloy = {
  symbol: "au585-green",
  name: "14 K green gold",
  density: 14.2,
  range: [12.9, 14.6],
  fineness: 585,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};
