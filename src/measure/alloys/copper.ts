/**
 * Copper alloys.
 */
import type { Alloy } from "./alloy.js";

export const bronze: Alloy = {
  symbol: "bronze",
  name: "Bronze",
  density: 8.8,
  kind: "copper alloy",
  source: "one credible source, publisher not recorded",
  certainty: "one credible source",
};

export const brass: Alloy = {
  symbol: "brass",
  name: "Brass",
  density: 8.4,
  kind: "copper alloy",
  source: "stuller.com, Where can I find the specific gravity",
  certainty: "one credible source",
};
