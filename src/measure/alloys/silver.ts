/**
 * Silver.
 */
import type { Alloy } from "./alloy.js";

export const ag999: Alloy = {
  symbol: "ag999",
  name: "Fine silver",
  density: 10.49,
  range: [10.49, 10.53],
  fineness: 999,
  kind: "silver",
  source: "several sources agree (pure silver); stuller.com has 10.53",
  certainty: "standard",
};

export const ag925: Alloy = {
  symbol: "ag925",
  name: "Sterling silver",
  density: 10.36,
  range: [10.36, 10.4],
  fineness: 925,
  kind: "silver",
  source: "several sources agree; the mixing rule on Ag 925, Cu 75 ‰ gives 10.357; stuller.com has 10.40",
  certainty: "standard",
};

const COMPUTED = "mixing rule on silver 10.49 and copper 8.96";

/** Ag 800, Cu 200 ‰. */
export const ag800: Alloy = {
  symbol: "ag800",
  name: "Silver 800",
  density: 10.14,
  fineness: 800,
  kind: "silver",
  source: COMPUTED,
  certainty: "computed",
};

/** Ag 958, Cu 42 ‰. */
export const ag958: Alloy = {
  symbol: "ag958",
  name: "Britannia silver",
  density: 10.42,
  fineness: 958,
  kind: "silver",
  source: COMPUTED,
  certainty: "computed",
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
