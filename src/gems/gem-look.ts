/**
 * What a gem looks like, in pictures and in files that carry a colour: no value here weighs anything.
 *
 * Refractive index: from memory, textbook means of the gem's range; of a gem with two, their mean, since light is followed
 * as one ray. Colour: chosen by eye, the share of linear red, green, blue that is left after a way as long as the stone is
 * wide.
 */
import type { Point3 } from "../base/math/point.js";

/** How a gem looks. */
export interface GemLook {
  /** Linear red, green, blue, 0 to 1: what is left of light after one width of a clear gem; the colour of any other. */
  readonly colour: Point3;
  /** How much slower light is inside than in air, 1 or more. */
  readonly index: number;
  /** Whether one can look into it. */
  readonly clear: boolean;
}

const COLOURLESS: Point3 = [0.985, 0.985, 0.98];

/** A gem of the user's own: colourless, with the index of quartz. Chosen. */
const OWN: GemLook = clear(COLOURLESS, 1.55);

const LOOKS: Readonly<Record<string, GemLook>> = {
  diamond: clear(COLOURLESS, 2.42),
  moissanite: clear(COLOURLESS, 2.67),
  "cubic-zirconia": clear(COLOURLESS, 2.16),
  ruby: clear([0.78, 0.06, 0.12], 1.77),
  sapphire: clear([0.08, 0.16, 0.7], 1.77),
  emerald: clear([0.08, 0.66, 0.28], 1.58),
  aquamarine: clear([0.62, 0.88, 0.94], 1.58),
  morganite: clear([0.96, 0.74, 0.72], 1.59),
  alexandrite: clear([0.24, 0.46, 0.4], 1.75),
  chrysoberyl: clear([0.86, 0.82, 0.3], 1.75),
  spinel: clear([0.8, 0.12, 0.24], 1.72),
  topaz: clear([0.6, 0.84, 0.95], 1.62),
  amethyst: clear([0.44, 0.16, 0.66], 1.55),
  citrine: clear([0.93, 0.66, 0.16], 1.55),
  "rock-crystal": clear(COLOURLESS, 1.55),
  "rose-quartz": clear([0.95, 0.72, 0.75], 1.55),
  "smoky-quartz": clear([0.44, 0.31, 0.21], 1.55),
  tourmaline: clear([0.16, 0.6, 0.38], 1.63),
  almandine: clear([0.5, 0.05, 0.08], 1.79),
  rhodolite: clear([0.62, 0.1, 0.28], 1.76),
  pyrope: clear([0.62, 0.05, 0.06], 1.74),
  spessartine: clear([0.93, 0.42, 0.08], 1.8),
  tsavorite: clear([0.14, 0.66, 0.24], 1.74),
  hessonite: clear([0.84, 0.4, 0.12], 1.74),
  demantoid: clear([0.3, 0.72, 0.2], 1.88),
  peridot: clear([0.56, 0.76, 0.16], 1.67),
  tanzanite: clear([0.26, 0.22, 0.74], 1.69),
  zircon: clear([0.55, 0.82, 0.94], 1.95),
  iolite: clear([0.3, 0.3, 0.68], 1.54),
  kunzite: clear([0.93, 0.7, 0.86], 1.67),
  opal: dense([0.78, 0.8, 0.8], 1.45),
  moonstone: dense([0.72, 0.75, 0.8], 1.52),
  turquoise: dense([0.1, 0.52, 0.53], 1.61),
  "lapis-lazuli": dense([0.03, 0.06, 0.3], 1.5),
  jadeite: dense([0.1, 0.42, 0.16], 1.66),
  nephrite: dense([0.08, 0.26, 0.13], 1.61),
  pearl: dense([0.84, 0.81, 0.76], 1.53),
};

/** The look of a gem by its symbol; one of the user's own is colourless. */
export function gemLookOf(symbol: string): GemLook {
  return Object.hasOwn(LOOKS, symbol) ? LOOKS[symbol] : OWN;
}

function clear(colour: Point3, index: number): GemLook {
  return { colour, index, clear: true };
}

function dense(colour: Point3, index: number): GemLook {
  return { colour, index, clear: false };
}
