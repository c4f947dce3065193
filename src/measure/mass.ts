/**
 * Mass from volume: m = ρ V, and the weights of the trade.
 */
import { AnnuletError } from "../base/errors.js";
import { numberAbove0, numberFrom } from "../base/options.js";
import { MM3_PER_CM3 } from "../base/units.js";
import type { Alloy } from "./alloys/alloy.js";

/** Grams in a troy ounce: 480 grains of 64.79891 mg, exact by the international pound of 1959. */
const GRAMS_PER_TROY_OUNCE = 31.1034768;

/** Grams in a pennyweight, a twentieth of a troy ounce. */
const GRAMS_PER_PENNYWEIGHT = GRAMS_PER_TROY_OUNCE / 20;

const VOLUME = numberFrom(0, Number.POSITIVE_INFINITY, "mm³");
const DENSITY = numberAbove0("g/cm³");

/**
 * Mass of a solid, g.
 *
 * @param volume mm³, 0 or more
 * @param alloy anything with a density in g/cm³
 * @throws AnnuletError `mass-volume` for a volume that is negative (a mesh turned inside out) or no number,
 * `mass-density` for a density that is not above 0
 *
 * @example
 * massOf(481.3, { density: 10.36 }); // 4.99 g
 */
export function massOf(volume: number, alloy: Pick<Alloy, "density">): number {
  if (!VOLUME.holds(volume)) {
    throw new AnnuletError({
      code: "mass-volume",
      message: "This is no volume of a solid.",
      path: "volume",
      value: volume,
      allowed: VOLUME.allowed,
      hint: "A negative volume comes from a mesh that is turned inside out.",
    });
  }
  // A caller in JavaScript may pass anything.
  const { density } = Object(alloy) as typeof alloy;
  if (!DENSITY.holds(density)) {
    throw new AnnuletError({
      code: "mass-density",
      message: "This is no density.",
      path: "density",
      value: density,
      allowed: DENSITY.allowed,
    });
  }
  return (volume / MM3_PER_CM3) * density;
}

/** Grams to pennyweights, dwt. */
export function toPennyweights(grams: number): number {
  return grams / GRAMS_PER_PENNYWEIGHT;
}

/** Grams to troy ounces, ozt. */
export function toTroyOunces(grams: number): number {
  return grams / GRAMS_PER_TROY_OUNCE;
}
