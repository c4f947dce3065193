/**
 * The largest circle round a place that no segment enters.
 *
 * The distance to a segment is a convex function of the place, so its tangent plane never lies above it. Step by step the
 * centre goes to the summit of the nearest segments' tangent planes: the circle only grows, until two or three segments
 * hold it. Along straight sides the planes are the distances themselves, so that polygons take few steps.
 */
import { findSummit, type Plane } from "./exchange.js";
import type { Point2 } from "./point.js";

export interface Circle {
  readonly centre: Point2;
  readonly radius: number;
}

/** Growth, as a share of the radius, that is rounding. */
const LEAST_GROWTH = 1e-13;

/** A bore takes about five; a start in the tip of a needle takes many. */
const MOST_STEPS = 10_000;

/**
 * Grows a circle as far as it goes; another start may come to a larger one.
 *
 * @param segments x, y of both ends of each in turn
 * @param start a place that is on no segment
 * @param step the centre moves by at most twice this at once; above 0
 * @param most it stops growing beyond this radius, where nothing may hold it
 */
export function growCircle(
  segments: Float64Array,
  start: Point2,
  step: number,
  most = Number.POSITIVE_INFINITY,
): Circle {
  let centre = start;
  let radius = clearance(segments, centre);
  for (let i = 0; i < MOST_STEPS && radius <= most; i++) {
    // A summit lies at most two reaches away: within the circle, so that nothing is leapt over.
    const reach = Math.min(step, radius / 4);
    const summit = findSummit(tangentsNear(segments, centre, radius + 4 * reach), reach);
    const next: Point2 = [centre[0] + summit.at[0], centre[1] + summit.at[1]];
    const grown = clearance(segments, next);
    if (grown - radius <= LEAST_GROWTH * radius) break;
    centre = next;
    radius = grown;
  }
  return { centre, radius };
}

/** Distance to the nearest segment. */
export function clearance(segments: Float64Array, [x, y]: Point2): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < segments.length; i += 4) least = Math.min(least, squareTo(segments, i, x, y));
  return Math.sqrt(least);
}

/** Square of the distance to one segment. */
function squareTo(segments: Float64Array, i: number, x: number, y: number): number {
  const t = shareTo(segments, i, x, y);
  const dx = x - segments[i] - t * (segments[i + 2] - segments[i]);
  const dy = y - segments[i + 1] - t * (segments[i + 3] - segments[i + 1]);
  return dx * dx + dy * dy;
}

/** How far along the segment its nearest point lies, 0 to 1. */
function shareTo(segments: Float64Array, i: number, x: number, y: number): number {
  const ux = segments[i + 2] - segments[i];
  const uy = segments[i + 3] - segments[i + 1];
  const square = ux * ux + uy * uy;
  if (square === 0) return 0;
  return Math.min(1, Math.max(0, ((x - segments[i]) * ux + (y - segments[i + 1]) * uy) / square));
}

/** Tangent planes of the distances that are at most `most`. */
function tangentsNear(segments: Float64Array, [x, y]: Point2, most: number): Plane[] {
  const planes: Plane[] = [];
  for (let i = 0; i < segments.length; i += 4) {
    const height = Math.sqrt(squareTo(segments, i, x, y));
    if (height > most || height === 0) continue;
    const t = shareTo(segments, i, x, y);
    const px = segments[i] + t * (segments[i + 2] - segments[i]);
    const py = segments[i + 1] + t * (segments[i + 3] - segments[i + 1]);
    planes.push({ height, slope: [(x - px) / height, (y - py) / height] });
  }
  return planes;
}
