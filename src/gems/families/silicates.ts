/**
 * Other clear gems, each of its own family.
 */
import type { Gem } from "../gem.js";
import { agreed, HANDBOOK, PARKVILLE, practice, remembered, single, TABLE, TALK } from "./sources.js";

export const topaz: Gem = {
  symbol: "topaz",
  name: "Topaz",
  density: remembered(3.53),
  hardness: agreed([8, 8], HANDBOOK, PARKVILLE),
  ...practice("after", "no", "cleaves along one plane"),
};

export const tourmaline: Gem = {
  symbol: "tourmaline",
  name: "Tourmaline",
  density: single(3.06, TALK),
  hardness: single([7, 7.5], HANDBOOK),
  ...practice("after", "no", "cracks under sudden heat"),
};

export const peridot: Gem = {
  symbol: "peridot",
  name: "Peridot",
  density: agreed(3.34, TALK, TABLE),
  densityRange: [3.3, 3.5],
  hardness: agreed([6.5, 7], TALK, TABLE),
  ...practice("after", "no", "cracks under uneven heat, acids etch it"),
};

export const tanzanite: Gem = {
  symbol: "tanzanite",
  name: "Tanzanite",
  density: single(3.35, TALK),
  hardness: single([6, 7], "crystalkarat.com"),
  ...practice("after", "no", "cleaves along one plane, cracks under sudden heat"),
};

export const zircon: Gem = {
  symbol: "zircon",
  name: "Zircon",
  density: single(4.65, TALK),
  densityRange: [4.32, 4.7],
  hardness: single([6.5, 7.5], PARKVILLE, HANDBOOK),
  ...practice("after", "no", "brittle: facet edges chip"),
};

export const iolite: Gem = {
  symbol: "iolite",
  name: "Iolite",
  density: single(2.61, TALK),
  hardness: single([7, 7.5], HANDBOOK),
  ...practice("after", "no", "cleaves along one plane"),
};

export const kunzite: Gem = {
  symbol: "kunzite",
  name: "Kunzite (spodumene)",
  density: single(3.18, TALK),
  hardness: remembered([6.5, 7]),
  ...practice("after", "no", "cleaves along two planes; colour fades in heat and light"),
};
