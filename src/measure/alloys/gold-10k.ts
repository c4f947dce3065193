/**
 * 10 karat gold, 10/24 = 417 ‰, a US fineness that ISO 9202 does not list.
 */
import type { Alloy } from "./alloy.js";

const SOURCE = "stuller.com, Where can I find the specific gravity";

export const au417Yellow: Alloy = {
  symbol: "au417-yellow",
  name: "10 K yellow gold",
  density: 11.57,
  fineness: 417,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};

export const au417White: Alloy = {
  symbol: "au417-white",
  name: "10 K white gold",
  density: 11.07,
  fineness: 417,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};

export const au417Red: Alloy = {
  symbol: "au417-red",
  name: "10 K red gold",
  density: 11.59,
  fineness: 417,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};

export const au417Green: Alloy = {
  symbol: "au417-green",
  name: "10 K green gold",
  density: 11.03,
  fineness: 417,
  kind: "gold",
  source: SOURCE,
  certainty: "one credible source",
};
