/**
 * The built-in gems. A new one is one value in its family's file and one line here.
 */
import { nearest } from "../base/errors/nearest.js";
import { safeText } from "../base/errors/safe-text.js";
import { AnnuletError } from "../base/errors.js";
import { aquamarine, emerald, morganite } from "./families/beryl.js";
import { ruby, sapphire } from "./families/corundum.js";
import { cubicZirconia, diamond, moissanite } from "./families/diamond.js";
import { almandine, demantoid, hessonite, pyrope, rhodolite, spessartine, tsavorite } from "./families/garnet.js";
import { jadeite, lapisLazuli, moonstone, nephrite, opal, pearl, turquoise } from "./families/opaque.js";
import { alexandrite, chrysoberyl, spinel } from "./families/oxides.js";
import { amethyst, citrine, rockCrystal, roseQuartz, smokyQuartz } from "./families/quartz.js";
import { iolite, kunzite, peridot, tanzanite, topaz, tourmaline, zircon } from "./families/silicates.js";
import type { Gem } from "./gem.js";

/**
 * Every built-in gem with density (g/cm³), hardness (Mohs) and cautions, each with where it is from, in the order of tables.
 *
 * @example
 * const castInPlace = gems.filter((gem) => gem.heat.value === "cast").map((gem) => gem.symbol);
 */
export const gems: readonly Gem[] = [
  diamond,
  ruby,
  sapphire,
  emerald,
  aquamarine,
  morganite,
  alexandrite,
  chrysoberyl,
  spinel,
  topaz,
  amethyst,
  citrine,
  rockCrystal,
  roseQuartz,
  smokyQuartz,
  tourmaline,
  almandine,
  rhodolite,
  pyrope,
  spessartine,
  tsavorite,
  hessonite,
  demantoid,
  peridot,
  tanzanite,
  zircon,
  iolite,
  kunzite,
  opal,
  moonstone,
  turquoise,
  lapisLazuli,
  jadeite,
  nephrite,
  pearl,
  cubicZirconia,
  moissanite,
];

/**
 * The gem of a symbol.
 *
 * @param choice default the built-in ones
 * @param path where the symbol stands
 * @throws AnnuletError `gem-unknown`, naming the nearest
 */
export function findGem(symbol: string, choice: readonly Gem[] = gems, path = "gem"): Gem {
  const found = choice.find((gem) => gem.symbol === symbol);
  if (found) return found;
  const symbols = choice.map((gem) => gem.symbol);
  throw new AnnuletError({
    code: "gem-unknown",
    message: `There is no gem ${safeText(symbol)}.`,
    path,
    value: symbol,
    allowed: symbols.join(", "),
    hint: nearest(symbol, symbols),
  });
}
