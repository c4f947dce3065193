/**
 * What patterns are made of.
 */
import type { Alloy } from "./alloy.js";

export const wax: Alloy = {
  symbol: "wax",
  name: "Wax (by convention)",
  density: 1,
  kind: "pattern",
  source: "the convention of casting tables (stuller.com, Where can I find the specific gravity)",
  certainty: "common practice",
};

export const waxBees: Alloy = {
  symbol: "wax-bees",
  name: "Beeswax",
  density: 0.95,
  kind: "pattern",
  source: "one credible source, publisher not recorded",
  certainty: "one credible source",
};

/** The range is from memory. */
export const resin: Alloy = {
  symbol: "resin",
  name: "Castable resin",
  density: 1.09,
  range: [1.05, 1.2],
  kind: "pattern",
  source: "one make of casting resin, publisher not recorded",
  certainty: "one credible source",
};
