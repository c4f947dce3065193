/**
 * Silver.
 */
import type { Alloy } from "./alloy.js";

export const ag999: Alloy = {
  symbol: "ag999",
  name: "Fine silver",
  density: 10.49,
  fineness: 999,
  kind: "silver",
  source: "several sources agree (pure silver)",
  certainty: "standard",
};

export const ag925: Alloy = {
  symbol: "ag925",
  name: "Sterling silver",
  density: 10.36,
  fineness: 925,
  kind: "silver",
  source: "several sources agree; the mixing rule on Ag 925, Cu 75 ‰ gives 10.357",
  certainty: "standard",
};

/** 935 ‰ is not among the finenesses of ISO 9202. */
export const ag935: Alloy = {
  symbol: "ag935",
  name: "Germanium silver 935",
  density: 10.38,
  fineness: 935,
  kind: "silver",
  source: "one credible source, publisher not recorded",
  certainty: "one credible source",
};
