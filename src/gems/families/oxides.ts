/**
 * Chrysoberyl and spinel.
 */
import type { Gem } from "../gem.js";
import { agreed, practice, TABLE, TALK, VIEWS } from "./sources.js";

const CHRYSOBERYL: Omit<Gem, "symbol" | "name"> = {
  density: agreed(3.73, TALK, VIEWS, TABLE),
  densityRange: [3.6, 3.8],
  hardness: agreed([8.5, 8.5], TALK, VIEWS, TABLE),
  ...practice("after", "caution"),
};

export const alexandrite: Gem = { symbol: "alexandrite", name: "Alexandrite", ...CHRYSOBERYL };

export const chrysoberyl: Gem = { symbol: "chrysoberyl", name: "Chrysoberyl", ...CHRYSOBERYL };

export const spinel: Gem = {
  symbol: "spinel",
  name: "Spinel",
  density: agreed(3.6, TALK, TABLE),
  hardness: agreed([8, 8], TALK, TABLE),
  ...practice("after", "caution"),
};
