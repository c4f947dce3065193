/**
 * Beryls.
 */
import type { Gem } from "../gem.js";
import { agreed, notFlush, practice, single, TABLE, TALK } from "./sources.js";

export const emerald: Gem = {
  symbol: "emerald",
  name: "Emerald",
  density: agreed(2.72, TALK, TABLE),
  densityRange: [2.68, 2.74],
  hardness: agreed([7.5, 8], TALK, TABLE),
  ...practice("after", "no"),
  ...notFlush("brittle and included, mostly oiled"),
};

export const aquamarine: Gem = {
  symbol: "aquamarine",
  name: "Aquamarine",
  density: agreed(2.7, TABLE),
  densityRange: [2.68, 2.71],
  hardness: agreed([7.5, 8], TABLE),
  ...practice("after", "caution"),
};

export const morganite: Gem = {
  symbol: "morganite",
  name: "Morganite",
  density: single(2.8, TABLE),
  densityRange: [2.8, 2.9],
  hardness: single([7.5, 8], TABLE),
  ...practice("after", "caution"),
};
