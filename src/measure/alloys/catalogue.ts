/**
 * The built-in materials. A new one is one value in its family's file, or one file, and one line here.
 * A file holds a family of close alloys, because they share their source and differ in little but one number.
 */
import { AnnuletError } from "../../base/errors.js";
import type { Alloy } from "./alloy.js";
import { brass, bronze } from "./copper.js";
import { au375Red, au375White, au375Yellow } from "./gold-9ct.js";
import { au417Green, au417Red, au417White, au417Yellow } from "./gold-10k.js";
import { au585Green, au585Red, au585White, au585WhitePd, au585Yellow } from "./gold-14k.js";
import { au750Green, au750Red, au750White, au750WhitePd, au750Yellow } from "./gold-18k.js";
import { au916, au999 } from "./gold-fine.js";
import { nearestMaterial } from "./nearest-material.js";
import { pd950, pd999 } from "./palladium.js";
import { resin, wax, waxBees } from "./pattern.js";
import { pt900Ir, pt950Co, pt950Ir, pt950Ru, pt999 } from "./platinum.js";
import { ag800, ag925, ag935, ag958, ag999 } from "./silver.js";

/**
 * Every built-in material with its density in g/cm³ and where that is from, in the order tables show them.
 *
 * @example
 * const heavy = alloys.filter((alloy) => alloy.density > 15).map((alloy) => alloy.symbol);
 */
export const alloys: readonly Alloy[] = [
  ag925,
  ag800,
  ag935,
  ag958,
  ag999,
  au375Yellow,
  au375White,
  au375Red,
  au417Yellow,
  au417White,
  au417Red,
  au417Green,
  au585Yellow,
  au585White,
  au585WhitePd,
  au585Red,
  au585Green,
  au750Yellow,
  au750White,
  au750WhitePd,
  au750Red,
  au750Green,
  au916,
  au999,
  pt950Ru,
  pt950Co,
  pt950Ir,
  pt900Ir,
  pt999,
  pd950,
  pd999,
  bronze,
  brass,
  wax,
  waxBees,
  resin,
];

export interface AlloyOptions {
  /** The materials to choose from; default the built-in ones. */
  readonly alloys?: readonly Alloy[];
}

/**
 * The material of a symbol.
 *
 * @throws AnnuletError `material-unknown`, naming the nearest
 */
export function findAlloy(symbol: string, options: AlloyOptions = {}): Alloy {
  const choice = options.alloys ?? alloys;
  const found = choice.find((alloy) => alloy.symbol === symbol);
  if (found) return found;
  const meant = nearestMaterial(symbol, choice);
  throw new AnnuletError({
    code: "material-unknown",
    message: `There is no material ${JSON.stringify(symbol)}.`,
    path: "material",
    value: symbol,
    allowed: choice.map((alloy) => alloy.symbol).join(", "),
    hint: meant === undefined ? undefined : `Did you mean ${meant}?`,
  });
}
