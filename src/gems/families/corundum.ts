/**
 * Corundum.
 */
import type { Gem } from "../gem.js";
import { agreed, practice, TABLE, TALK, VIEWS } from "./sources.js";

const CORUNDUM: Omit<Gem, "symbol" | "name"> = {
  density: agreed(4, TALK, TABLE, VIEWS),
  densityRange: [3.96, 4.1],
  hardness: agreed([9, 9], TALK, TABLE, VIEWS),
  ...practice("cast", "caution", "filled or included stones bear neither heat nor acid"),
};

export const ruby: Gem = { symbol: "ruby", name: "Ruby", ...CORUNDUM };

export const sapphire: Gem = { symbol: "sapphire", name: "Sapphire", ...CORUNDUM };
