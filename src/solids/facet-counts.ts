/**
 * How many flat facets the band has round the finger.
 */

import type { Bend } from "../band/band.js";
import { chordCount, type Segment } from "../base/math/curve.js";
import { TURN } from "../base/units.js";

/** Shares of the tolerance for chords round the band and across it: where both are at their worst they add up. */
export const AROUND_SHARE = 0.5;
export const ACROSS_SHARE = 1 - AROUND_SHARE;

/**
 * Facets round the band: enough for the tolerance at the largest radius, and a whole number a tile (even, where that
 * costs little, so that a mirror in the tile's middle falls between facets).
 *
 * @param radius largest radius of band and relief, mm
 * @param tolerance mm, for these chords alone
 * @param repeats tiles round the band; 1 where the pattern does not go all the way round
 */
export function facetCount(radius: number, tolerance: number, repeats: number): number {
  const least = Math.max(chordCount(radius, TURN, tolerance), LEAST_FACETS);
  const step = 2 * repeats <= least ? 2 * repeats : repeats;
  return Math.ceil(least / step) * step;
}

/**
 * The radius of the circle whose facets stand off as much as those of a band do: chords by their sagitta r Δ² / 8, and edges
 * that twist by a quarter of how far their ends part, twist · Δ / 4 (the middle of a four-sided facet off its diagonal).
 *
 * @param tolerance mm
 */
export function bendRadius({ radius, twist }: Bend, tolerance: number): number {
  if (twist === 0) return radius;
  const [square, line] = [radius / 8, twist / 4];
  const step = (Math.sqrt(line * line + 4 * square * tolerance) - line) / (2 * square);
  return (8 * tolerance) / (step * step);
}

/** No band is coarser than this, however large its tolerance. */
const LEAST_FACETS = 24;

/** The most chords that one of several segments takes. */
export function mostChords(segments: readonly Segment[], how: Parameters<typeof chordsAcross>[1]): number {
  return Math.max(...segments.map((segment) => chordsAcross(segment, how)));
}

/**
 * Chords that keep a segment of a surface's line, and the surfaces above and below it, within the tolerance; mm. What
 * turns clockwise along the line bulges to its left, outward, and grows with the height.
 */
export function chordsAcross(
  segment: Segment,
  { height, depth, tolerance }: { readonly height: number; readonly depth: number; readonly tolerance: number },
): number {
  if (segment.kind === "line") return 1;
  return chordCount(segment.radius + (segment.sweep < 0 ? height : depth), segment.sweep, tolerance);
}
