/**
 * What a material looks like, for previews: no value here weighs anything.
 *
 * Reflectance at normal incidence in linear red, green, blue. Pure metals and brass: from memory, as tables of measured
 * reflectance for shading give them. Alloys: chosen by eye between their metals, no source.
 */
import type { Point3 } from "../../math/point.js";
import type { Alloy } from "./alloy.js";

export interface Look {
  /** The material's name in tables. */
  readonly name: string;
  /** Linear red, green, blue, 0 to 1: the reflectance of a metal, the colour of anything else. */
  readonly colour: Point3;
  readonly metal: boolean;
}

const BY_SYMBOL: Readonly<Record<string, Point3>> = {
  au999: [1, 0.766, 0.336],
  au916: [0.99, 0.76, 0.35],
  "au375-yellow": [0.93, 0.79, 0.52],
  bronze: [0.8, 0.56, 0.36],
  brass: [0.91, 0.778, 0.423],
  wax: [0.1, 0.3, 0.22],
  "wax-bees": [0.75, 0.5, 0.15],
  resin: [0.55, 0.2, 0.05],
};

const GOLD_BY_COLOUR: Readonly<Record<string, Point3>> = {
  yellow: [0.97, 0.78, 0.43],
  white: [0.78, 0.75, 0.68],
  red: [0.95, 0.68, 0.5],
  green: [0.92, 0.83, 0.53],
};

const BY_KIND: Readonly<Record<Alloy["kind"], Point3>> = {
  gold: GOLD_BY_COLOUR.yellow,
  silver: [0.972, 0.96, 0.915],
  platinum: [0.673, 0.637, 0.585],
  palladium: [0.733, 0.697, 0.652],
  "copper alloy": [0.955, 0.638, 0.538],
  pattern: [0.5, 0.5, 0.5],
  other: [0.6, 0.6, 0.6],
};

/** The look of any material: by its symbol, else by the colour of its gold, else by its kind. */
export function lookOf({ symbol, name, kind }: Alloy): Look {
  const gold = kind === "gold" ? GOLD_BY_COLOUR[symbol.split("-")[1] ?? ""] : undefined;
  return { name, colour: BY_SYMBOL[symbol] ?? gold ?? BY_KIND[kind], metal: kind !== "pattern" };
}
