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

/** Cobalt 8.90 g/cm³ is from memory. */
export const pt950Co: Alloy = {
  symbol: "pt950-co",
  name: "Platinum 950 with cobalt",
  density: 20.04,
  fineness: 950,
  kind: "platinum",
  source: COMPUTED,
  certainty: "computed",
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
