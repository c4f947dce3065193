/** Strips, drawings and measures for the pattern's tests. */
import fc from "fast-check";
import type { Fit } from "../../src/band/fit/fit.js";
import type { Warning } from "../../src/base/errors.js";
import type { FriezeName } from "../../src/base/frieze/symmetry.js";
import { type RegionSpec, regionSchema } from "../../src/design/pattern/region.js";
import { type GridRegion, ringArea, subtract } from "../../src/flat/polygons.js";
import { makeStrip, type Strip } from "../../src/flat/strip.js";

/** The seed of every property test. */
export const SEED = 20261125;

export interface StripInput {
  readonly symmetry?: FriezeName;
  readonly tileWidth?: number;
  readonly aspect?: number;
  readonly rows?: number;
  readonly repeats?: number;
  readonly cycle?: number;
  readonly cover?: number;
  readonly tolerance?: number;
}

/** A fit of true tiles on a seat as long as they need. */
export function fitOf({
  tileWidth = 6,
  aspect = 1,
  rows = 1,
  repeats = 9,
  cover = 360,
  cycle = 1,
}: StripInput = {}): Fit {
  const tileHeight = aspect * tileWidth;
  return {
    repeats,
    rows,
    cycle,
    medallion: 0,
    cover,
    aspect,
    hold: "tile",
    tileWidth,
    tileHeight,
    bandWidth: rows * tileHeight,
    referenceRadius: (repeats * tileWidth * 360) / cover / (2 * Math.PI),
    stretch: 1,
    aspectError: 0,
    candidates: [],
    lanes: [],
  };
}

export function stripOf(input: StripInput = {}): Strip {
  const fit = fitOf(input);
  return makeStrip(fit, input.symmetry ?? "p1", fit.rows * fit.tileHeight, input.tolerance ?? 0.01);
}

/** A region's spec with defaults filled in. */
export function region(spec: Readonly<Record<string, unknown>>): RegionSpec {
  return regionSchema.parse({ height: 0.5, ...spec });
}

/** Area of a region, mm². */
export function areaOf(strip: Strip, rings: GridRegion): number {
  return rings.reduce((sum, ring) => sum + ringArea(ring), 0) / strip.grid.scale ** 2;
}

/** Area of what lies in one region and not in the other, mm². */
export function differenceArea(strip: Strip, a: GridRegion, b: GridRegion): number {
  return areaOf(strip, subtract(a, b)) + areaOf(strip, subtract(b, a));
}

/** A taker of warnings and what it took. */
export function collector(): {
  readonly warnings: Warning[];
  readonly codes: string[];
  readonly warn: (w: Warning) => void;
} {
  const warnings: Warning[] = [];
  const codes: string[] = [];
  return {
    warnings,
    codes,
    warn: (warning) => {
      warnings.push(warning);
      codes.push(warning.code);
    },
  };
}

/** Freezes a value and all it holds. */
export function deepFreeze<T>(value: T): T {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const inner of Object.values(value)) deepFreeze(inner);
  }
  return value;
}

const thousandth = (low: number, high: number) =>
  fc.integer({ min: Math.round(low * 1000), max: Math.round(high * 1000) }).map((n) => n / 1000);

/** A blob about a middle in a quarter of the tile: a star-shaped polygon. Its path data. */
const blob: fc.Arbitrary<string> = fc
  .record({
    x: thousandth(0.1, 0.4),
    y: thousandth(-0.3, 0.3),
    radii: fc.array(thousandth(0.03, 0.18), { minLength: 3, maxLength: 9 }),
    turn: thousandth(0, 6),
  })
  .map(({ x, y, radii, turn }) => {
    const points = radii.map((radius, i) => {
      const angle = turn + (2 * Math.PI * i) / radii.length;
      return `${(x + radius * Math.cos(angle)).toFixed(4)} ${(y + radius * Math.sin(angle)).toFixed(4)}`;
    });
    return `M ${points.join(" L ")} Z`;
  });

/** Random drawings of some blobs. */
export const drawing: fc.Arbitrary<string> = fc
  .array(blob, { minLength: 1, maxLength: 3 })
  .map((blobs) => blobs.join(" "));

/** A circle as path data. */
export function circle(x: number, y: number, radius: number): string {
  return `M ${x + radius} ${y} A ${radius} ${radius} 0 0 1 ${x - radius} ${y} A ${radius} ${radius} 0 0 1 ${x + radius} ${y} Z`;
}

export { failureOf } from "../support/failure-of.js";

/** What a body has beside its section where a test asks nothing of it. */
export const plainBody = { mode: "raised", names: ["part"], where: "pattern.regions[0]", fade: undefined } as const;

/** Motions of the seat by whole quarters of a millimetre, so that sums are exact. */
export const motions = fc.record({
  u: fc.integer({ min: -400, max: 400 }).map((n) => n / 4),
  v: fc.integer({ min: -40, max: 40 }).map((n) => n / 4),
  mirrored: fc.boolean(),
  flipped: fc.boolean(),
});
