/**
 * Gems that are mostly cut as cabochons, and pearl.
 */
import type { Gem } from "../gem.js";
import { agreed, HANDBOOK, notFlush, practice, single, TABLE, TALK, VIEWS } from "./sources.js";

export const opal: Gem = {
  symbol: "opal",
  name: "Opal",
  density: agreed(2.15, TALK, TABLE),
  densityRange: [2, 2.3],
  hardness: agreed([5.5, 6.5], TALK, TABLE),
  ...practice("after", "no"),
  ...notFlush("holds water and crazes in heat"),
};

export const moonstone: Gem = {
  symbol: "moonstone",
  name: "Moonstone (orthoclase)",
  density: single(2.57, TABLE, VIEWS),
  densityRange: [2.55, 2.76],
  hardness: single([6, 6], TABLE, VIEWS),
  ...practice("after", "no", "cleaves along two planes"),
};

export const turquoise: Gem = {
  symbol: "turquoise",
  name: "Turquoise",
  density: single(2.76, TALK),
  hardness: single([5, 6], HANDBOOK),
  ...practice("after", "no", "porous, often filled"),
};

export const lapisLazuli: Gem = {
  symbol: "lapis-lazuli",
  name: "Lapis lazuli",
  density: agreed(2.75, TALK, TABLE),
  densityRange: [2.7, 2.9],
  hardness: agreed([5, 5.5], TALK, TABLE),
  ...practice("after", "no", "acids dull it, heat cracks it"),
};

export const jadeite: Gem = {
  symbol: "jadeite",
  name: "Jade, jadeite",
  density: agreed(3.34, TALK, TABLE),
  densityRange: [3.2, 3.4],
  hardness: agreed([6, 7], TALK, TABLE),
  ...practice("after", "caution"),
};

export const nephrite: Gem = {
  symbol: "nephrite",
  name: "Jade, nephrite",
  density: single(2.95, TALK, TABLE),
  densityRange: [2.95, 3.4],
  hardness: single([6, 6], TALK, TABLE),
  ...practice("after", "caution"),
};

export const pearl: Gem = {
  symbol: "pearl",
  name: "Pearl",
  density: single(2.7, TALK),
  hardness: single([2.5, 4.5], TALK),
  ...practice("after", "no", "soft; acids and heat spoil it"),
};
