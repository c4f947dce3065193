/**
 * Diamond, and what stands in for it.
 */
import type { Gem } from "../gem.js";
import { agreed, PARKVILLE, practice, remembered, SOCIETY, single, TABLE, TALK, VIEWS } from "./sources.js";

export const diamond: Gem = {
  symbol: "diamond",
  name: "Diamond",
  density: agreed(3.52, TALK, TABLE, VIEWS),
  densityRange: [3.51, 3.52],
  hardness: agreed([10, 10], TALK, TABLE, VIEWS),
  ...practice("cast", "caution", "cleaves along four directions under a blow"),
};

export const moissanite: Gem = {
  symbol: "moissanite",
  name: "Moissanite",
  density: remembered(3.22),
  hardness: single([9.25, 9.5], PARKVILLE),
  ...practice("after", "yes"),
};

export const cubicZirconia: Gem = {
  symbol: "cubic-zirconia",
  name: "Cubic zirconia",
  density: agreed(5.8, SOCIETY, "Wikipedia, Cubic zirconia"),
  densityRange: [5.5, 6],
  hardness: agreed([8, 8.5], SOCIETY, "Wikipedia, Cubic zirconia"),
  ...practice("cast", "yes"),
};
