/**
 * Whether the strokes of a text are wide enough to be cast, and where they are narrowest.
 */
import type { Warn } from "../base/errors.js";
import { BREATH, type Pausing } from "../base/pausing.js";
import { showLength } from "../base/units.js";
import { clustersOf } from "../flat/clusters.js";
import { keepsParts } from "../flat/keeps-parts.js";
import { narrowestPlace } from "../flat/narrowest.js";
import { type GridRegion, shrink } from "../flat/polygons.js";
import { type Strip, steps } from "../flat/strip.js";

/**
 * Narrowest strokes, mm. Raised ones are ribs: a wire's print limit in a castable-resin maker's guide of July 2019. Sunk
 * ones are gaps: a casting house's least gap between parts (morrisandwatson.com, CAD guidelines).
 */
const LEAST_STROKE = { raised: 0.3, sunk: 0.2 } as const;

/** The narrowest width is found to this, mm. */
const PRECISION = 1e-3;

/** A narrow stroke: its width, and x of the place on the strip, mm. */
export interface Narrow {
  readonly width: number;
  readonly x: number;
}

/** Outlines that do not touch, to the grid step, shrink each by itself. */
const APART = 1;

/**
 * The narrowest stroke below `width` mm; undefined where there is none. A stroke that ends in a tip only ends sooner.
 *
 * It is looked for letter by letter: of those that are as wide as the narrowest one so far, only that is asked.
 */
export function* narrowestStroke(strip: Strip, region: GridRegion, width: number): Pausing<Narrow | undefined> {
  let narrowest: { readonly letter: GridRegion; readonly reach: number } | undefined;
  for (const letter of clustersOf(region, APART)) {
    yield undefined;
    const holds = (reach: number) => keepsParts(letter, shrink(letter, steps(strip, reach), strip.arcTolerance));
    if (holds(narrowest?.reach ?? width / 2)) continue;
    let [good, bad] = [0, width / 2];
    while (bad - good > PRECISION / 2) {
      yield BREATH;
      const middle = (good + bad) / 2;
      if (holds(middle)) good = middle;
      else bad = middle;
    }
    narrowest = { letter, reach: good };
  }
  if (narrowest === undefined) return undefined;
  yield undefined;
  const { letter, reach } = narrowest;
  return { width: 2 * reach, x: narrowestPlace(strip, letter, reach).x * strip.tileWidth };
}

export interface StrokeNotice {
  readonly mode: keyof typeof LEAST_STROKE;
  readonly path: string;
  /** The letter at x of the strip, mm. */
  readonly letterAt: (x: number) => string;
  readonly warn: Warn;
}

/** Warns `stroke-thin`. */
export function* warnThinStrokes(
  strip: Strip,
  region: GridRegion,
  { mode, path, letterAt, warn }: StrokeNotice,
): Pausing<void> {
  const least = LEAST_STROKE[mode];
  const narrow = yield* narrowestStroke(strip, region, least);
  if (narrow === undefined) return;
  const why = mode === "raised" ? "rises as a rib" : "is a gap in the pattern that the investment must fill";
  warn({
    code: "stroke-thin",
    message: `a stroke of ${letterAt(narrow.x)} is ${showLength(narrow.width)} wide; it ${why}, and may not come out`,
    path,
    value: Number(narrow.width.toFixed(3)),
    allowed: `${showLength(least)} or more`,
    hint: "make the letters higher, or name a bolder font",
  });
}
