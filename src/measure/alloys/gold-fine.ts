/**
 * Fine gold and 22 carat gold.
 */
import type { Alloy } from "./alloy.js";

export const au999: Alloy = {
  symbol: "au999",
  name: "Fine gold",
  density: 19.32,
  fineness: 999,
  kind: "gold",
  source: "several sources agree (pure gold)",
  certainty: "standard",
};

/** The middle of one source's range; a UK casting house's wax factor gives 17.84 (designbuildcast.co.uk, over 1.05). */
export const au916: Alloy = {
  symbol: "au916",
  name: "22 ct gold",
  density: 17.75,
  range: [17.7, 17.84],
  fineness: 916,
  kind: "gold",
  source: "middle of the range 17.7 to 17.8 of one credible source, publisher not recorded",
  certainty: "one credible source",
};
