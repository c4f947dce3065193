/**
 * Platinum.
 */
import type { Alloy } from "./alloy.js";

const COMPUTED = "mixing rule on pure densities, Platinum Metals Rev. 16(2), 1972, p. 59";

export const pt999: Alloy = {
  symbol: "pt999",
  name: "Fine platinum",
  density: 21.45,
  fineness: 999,
  kind: "platinum",
  source: "Platinum Metals Rev. 16(2), 1972, p. 59, pure platinum",
  certainty: "standard",
};

export const pt950Ru: Alloy = {
  symbol: "pt950-ru",
  name: "Platinum 950 with ruthenium",
  density: 20.7,
  fineness: 950,
  kind: "platinum",
  source: COMPUTED,
  certainty: "computed",
};

/** Cobalt 8.90 g/cm³ is from memory. The mixing rule and the one published figure differ by 4 %: ask for the maker's. */
export const pt950Co: Alloy = {
  symbol: "pt950-co",
  name: "Platinum 950 with cobalt",
  density: 20.04,
  range: [20.04, 20.8],
  fineness: 950,
  kind: "platinum",
  source: `${COMPUTED}; stuller.com has 20.80`,
  certainty: "weak",
};

export const pt950Ir: Alloy = {
  symbol: "pt950-ir",
  name: "Platinum 950 with iridium",
  density: 21.51,
  fineness: 950,
  kind: "platinum",
  source: COMPUTED,
  certainty: "computed",
};

/** The mixing rule gives 21.56. */
export const pt900Ir: Alloy = {
  symbol: "pt900-ir",
  name: "Platinum 900 with iridium",
  density: 21.54,
  range: [21.54, 21.56],
  fineness: 900,
  kind: "platinum",
  source: "stuller.com, Where can I find the specific gravity; range up to the mixing rule",
  certainty: "one credible source",
};
