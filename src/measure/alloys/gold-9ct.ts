/**
 * 9 carat gold, 375 ‰.
 */
import type { Alloy } from "./alloy.js";

/** The published range covers every colour and its middle, 11.8, is heavier than yellow: hence a computed value. */
export const au375Yellow: Alloy = {
  symbol: "au375-yellow",
  name: "9 ct yellow gold",
  density: 11.15,
  range: [10.9, 12.7],
  fineness: 375,
  kind: "gold",
  source: "mixing rule on Au 375, Ag 100, Cu 450, Zn 75 ‰, a usual composition from memory; range from 24carat.co.uk",
  certainty: "memory",
};
