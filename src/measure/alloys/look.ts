/**
 * What a material looks like, for pictures and previews: no value here weighs anything.
 *
 * Reflectance at normal incidence in linear red, green, blue (sRGB primaries). Silver, gold, copper, platinum, brass: table of
 * metals in the material notes of the open-source renderer filament (google/filament), whose sRGB values are made linear here.
 * Palladium: from memory; a second published table has 0.736, 0.702, 0.660. Alloys: chosen by eye between their metals, no
 * source; white golds as cast and polished, without a plating of rhodium. Wax and resin: common practice, no source.
 */
import type { Point3 } from "../../base/math/point.js";
import type { Alloy } from "./alloy.js";

/** How a material looks in pictures and in files that carry a colour. */
export interface Look {
  /** The material's name in tables. */
  readonly name: string;
  /** Linear red, green, blue, 0 to 1: the reflectance of a metal, the colour of anything else. */
  readonly colour: Point3;
  readonly metal: boolean;
}

const BY_SYMBOL: Readonly<Record<string, Point3>> = {
  ag925: [0.95, 0.938, 0.9],
  ag935: [0.952, 0.941, 0.905],
  "au375-yellow": [0.93, 0.75, 0.49],
  "au417-yellow": [0.935, 0.75, 0.48],
  "au417-white": [0.8, 0.775, 0.715],
  "au417-red": [0.93, 0.665, 0.52],
  "au585-yellow": [0.955, 0.75, 0.44],
  "au585-white": [0.79, 0.765, 0.7],
  "au585-red": [0.945, 0.655, 0.485],
  "au585-green": [0.93, 0.785, 0.46],
  "au750-red": [0.965, 0.65, 0.435],
  "au750-green": [0.935, 0.775, 0.41],
  au916: [0.99, 0.72, 0.36],
  au999: [1, 0.716, 0.337],
  bronze: [0.85, 0.645, 0.425],
  brass: [0.905, 0.775, 0.418],
  wax: [0.07, 0.25, 0.2],
  "wax-bees": [0.62, 0.42, 0.16],
  resin: [0.5, 0.2, 0.06],
};

/** 750 ‰ stands for what has no colour of its own here. */
const GOLD_BY_COLOUR: Readonly<Record<string, Point3>> = {
  yellow: [0.98, 0.735, 0.38],
  white: [0.775, 0.745, 0.675],
  red: BY_SYMBOL["au750-red"],
  green: BY_SYMBOL["au750-green"],
};

const BY_KIND: Readonly<Record<Alloy["kind"], Point3>> = {
  gold: GOLD_BY_COLOUR.yellow,
  silver: [0.956, 0.947, 0.913],
  platinum: [0.672, 0.638, 0.578],
  palladium: [0.733, 0.697, 0.652],
  "copper alloy": [0.965, 0.686, 0.479],
  pattern: [0.5, 0.5, 0.5],
  other: [0.6, 0.6, 0.6],
};

/** The look of any material: by its symbol, else by the colour of its gold, else by its kind. */
export function lookOf({ symbol, name, kind }: Alloy): Look {
  const gold = kind === "gold" ? GOLD_BY_COLOUR[symbol.split("-")[1] ?? ""] : undefined;
  return { name, colour: BY_SYMBOL[symbol] ?? gold ?? BY_KIND[kind], metal: kind !== "pattern" };
}
