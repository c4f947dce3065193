/**
 * Whether enough metal stays beneath what is sunk into the seat.
 */
import { AnnuletError } from "../errors.js";
import { largestWhere } from "../math/largest.js";
import type { Point2 } from "../math/point.js";
import type { SunkShape } from "../pattern/pattern.js";
import { LEAST_WALL } from "../profile/limits.js";
import type { Profile } from "../profile/profile.js";
import { showLength } from "../units.js";
import type { Wrap } from "../wrap/wrap.js";

/** Places across a sunk region where its floor is measured. */
const PLACES = 64;

/**
 * Checks that a sunk region leaves the least wall to the bore and the sides, and that the seat's normals do not meet
 * above its floor.
 *
 * @throws AnnuletError `depth-too-large` with the largest depth
 */
export function requireFloorWall(shape: SunkShape, profile: Profile, wrap: Wrap): void {
  const places = acrossOf(shape);
  const rest = otherSides(profile);
  const wallAt = (depth: number) => Math.min(...places.map((v) => distanceTo(rest, wrap.section(v, -depth))));
  const fits = (depth: number) => goesForward(places, depth, wrap) && wallAt(depth) >= LEAST_WALL;
  // The wall shrinks only as the floor goes down, so what holds in small steps holds all the way.
  const steps = Array.from({ length: PLACES }, (_, i) => (shape.height * (i + 1)) / PLACES);
  const failing = steps.findIndex((depth) => !fits(depth));
  if (failing === -1) return;
  const largest = largestWhere(failing === 0 ? 0 : steps[failing - 1], steps[failing], fits);
  throw new AnnuletError({
    code: "depth-too-large",
    message: `a region sunk ${showLength(shape.height)} deep leaves too little metal below it; the model needs ${showLength(LEAST_WALL)}`,
    path: shape.path,
    value: shape.height,
    allowed: `at most ${showLength(Math.floor(largest * 1000) / 1000)}`,
    hint: "sink it less, or make the band thicker",
  });
}

/** v from the region's lowest to its highest place, mm. */
function acrossOf({ outline }: SunkShape): number[] {
  const across = outline.flat(2).map(([, v]) => v);
  const [low, high] = across.reduce(([a, b], v) => [Math.min(a, v), Math.max(b, v)], [Infinity, -Infinity]);
  return Array.from({ length: PLACES + 1 }, (_, i) => low + ((high - low) * i) / PLACES);
}

/** The cross-section's edges that are not the seat. */
function otherSides({ polyline, seatSpan: [first, last] }: Profile): readonly (readonly [Point2, Point2])[] {
  return polyline
    .map((point, i) => [point, polyline[(i + 1) % polyline.length]] as const)
    .filter((_, i) => i < first || i >= last);
}

function distanceTo(edges: readonly (readonly [Point2, Point2])[], [w, r]: Point2): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [[aw, ar], [bw, br]] of edges) {
    const [dw, dr] = [bw - aw, br - ar];
    const along = ((w - aw) * dw + (r - ar) * dr) / (dw * dw + dr * dr);
    const t = Math.min(1, Math.max(0, along));
    least = Math.min(least, Math.hypot(aw + t * dw - w, ar + t * dr - r));
  }
  return least;
}

/** Whether places next to each other on the seat are still in order at a depth: where not, normals have met. */
function goesForward(places: readonly number[], depth: number, wrap: Wrap): boolean {
  return places.every((v, i) => {
    if (i === 0) return true;
    const [[aw, ar], [bw, br]] = [wrap.section(places[i - 1], -depth), wrap.section(v, -depth)];
    const [nw, nr] = wrap.normal((places[i - 1] + v) / 2);
    return (bw - aw) * nr - (br - ar) * nw > 0;
  });
}
