/**
 * Garnets. Sources differ by up to 6 %, since most stones are mixtures of two kinds.
 */
import type { Gem } from "../gem.js";
import { conflicting, practice, remembered, single, TABLE, TALK } from "./sources.js";

const CARE = practice("cast", "caution", "cracks under sudden heat and cold");

export const almandine: Gem = {
  symbol: "almandine",
  name: "Garnet, almandine",
  density: conflicting(4.05, "4.05 and 4.3", TALK, TABLE),
  densityRange: [4.05, 4.3],
  hardness: single([7.5, 7.5], TABLE),
  ...CARE,
};

export const rhodolite: Gem = {
  symbol: "rhodolite",
  name: "Garnet, rhodolite",
  density: single(3.84, TALK),
  hardness: remembered([7, 7.5]),
  ...CARE,
};

export const pyrope: Gem = {
  symbol: "pyrope",
  name: "Garnet, pyrope",
  density: conflicting(3.78, "3.78 and 3.6", TALK, TABLE),
  densityRange: [3.6, 3.78],
  hardness: single([7, 7.5], TABLE),
  ...CARE,
};

export const spessartine: Gem = {
  symbol: "spessartine",
  name: "Garnet, spessartine",
  density: single(4.15, TABLE),
  densityRange: [4.15, 4.2],
  hardness: single([7.25, 7.25], TABLE),
  ...CARE,
};

const GROSSULAR: Omit<Gem, "symbol" | "name"> = {
  density: single(3.61, TABLE),
  densityRange: [3.6, 3.61],
  hardness: single([7.25, 7.25], TABLE),
  ...CARE,
};

export const tsavorite: Gem = { symbol: "tsavorite", name: "Garnet, tsavorite (grossular)", ...GROSSULAR };

export const hessonite: Gem = { symbol: "hessonite", name: "Garnet, hessonite (grossular)", ...GROSSULAR };

export const demantoid: Gem = {
  symbol: "demantoid",
  name: "Garnet, demantoid",
  density: single(3.85, TABLE),
  densityRange: [3.85, 3.9],
  hardness: single([6.5, 6.5], TABLE),
  ...practice("after", "no", "soft for a garnet, and included"),
};
