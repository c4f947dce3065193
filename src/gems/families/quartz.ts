/**
 * Quartz in its colours.
 */
import type { Gem } from "../gem.js";
import { agreed, practice, TABLE, TALK } from "./sources.js";

const QUARTZ: Omit<Gem, "symbol" | "name"> = {
  density: agreed(2.65, TALK, TABLE),
  densityRange: [2.65, 2.66],
  hardness: agreed([7, 7], TALK, TABLE),
  ...practice("after", "caution", "heat changes its colour and cracks it"),
};

export const amethyst: Gem = { symbol: "amethyst", name: "Amethyst", ...QUARTZ };

export const citrine: Gem = { symbol: "citrine", name: "Citrine", ...QUARTZ };

export const rockCrystal: Gem = { symbol: "rock-crystal", name: "Rock crystal", ...QUARTZ };

export const roseQuartz: Gem = { symbol: "rose-quartz", name: "Rose quartz", ...QUARTZ };

export const smokyQuartz: Gem = { symbol: "smoky-quartz", name: "Smoky quartz", ...QUARTZ };
