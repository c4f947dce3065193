/**
 * Whether enough metal stays beneath what is sunk into the seat.
 */

import type { Band } from "../band/band.js";
import { LEAST_WALL } from "../band/profile/least-sizes.js";
import type { Profile } from "../band/profile/profile.js";
import type { BandSurface, SurfaceLine } from "../band/surface/surface.js";
import { AnnuletError } from "../base/errors.js";
import { extent } from "../base/math/extent.js";
import { largestWhere } from "../base/math/largest.js";
import { nearestShare } from "../base/math/nearest-share.js";
import type { Point2 } from "../base/math/point.js";
import { showLength } from "../base/units.js";
import type { FlatBody } from "../relief/flat-body.js";

/** Places across a sunk region where its floor is measured. */
const PLACES = 64;

/** What is sunk; its path names where its depth stands in the document. */
type Sunk = Pick<FlatBody, "outline" | "height" | "path"> & Partial<Pick<FlatBody, "upright">>;

export interface FloorOptions {
  readonly profile: Band;
  /** The map of the surface into which it is sunk. */
  readonly wrap: BandSurface;
  /** How deep the other surfaces are cut over it, mm. Default 0. */
  readonly opposite?: number;
}

/**
 * Checks that what is sunk into a surface leaves the least wall to the band's other sides, and that the surface's normals
 * do not meet above its floor.
 *
 * @throws AnnuletError `depth-too-large` with the largest depth
 */
export function requireFloorWall(sunk: Sunk, { profile, wrap, opposite = 0 }: FloorOptions): void {
  const range = extent(sunk.outline.flat(2).map(([, v]) => v));
  const least = LEAST_WALL + opposite;
  const floorAt = sunk.upright === true ? alongRadius : alongNormal;
  const sections = profile.looks.map((angle) => {
    const line = wrap.lineAt(angle);
    const places = acrossOf(wrap.keeps && !wrap.revolved ? range.map(withinWall(line)) : range);
    return { line, places, rest: otherSides(profile.sectionAt(angle), line) };
  });
  const fits = (depth: number) =>
    sections.every(({ line, places, rest }) => {
      const wall = () => Math.min(...places.map((v) => distanceTo(rest, floorAt(line, v, depth))));
      return goesForward(places, line, (v) => floorAt(line, v, depth)) && wall() >= least;
    });
  // The wall shrinks only as the floor goes down, so what holds in small steps holds all the way.
  const steps = Array.from({ length: PLACES }, (_, i) => (sunk.height * (i + 1)) / PLACES);
  const failing = steps.findIndex((depth) => !fits(depth));
  if (failing === -1) return;
  const largest = largestWhere(failing === 0 ? 0 : steps[failing - 1], steps[failing], fits);
  const across = opposite > 0 ? `, and ${showLength(opposite)} is cut from the other side` : "";
  throw new AnnuletError({
    code: "depth-too-large",
    message: `a region sunk ${showLength(sunk.height)} deep leaves too little metal below it; the model needs ${showLength(LEAST_WALL)}${across}`,
    path: sunk.path,
    value: sunk.height,
    allowed: `at most ${showLength(Math.floor(largest * 1000) / 1000)}`,
    hint: "sink it less, or make the band thicker",
  });
}

type FloorAt = (line: SurfaceLine, v: number, depth: number) => Point2;

const alongNormal: FloorAt = (line, v, depth) => line.point(v, -depth);

/** Of what is upright: so deep along the radius that it is as deep as told from a straight slope. */
const alongRadius: FloorAt = (line, v, depth) => {
  const [w, r] = line.point(v, 0);
  return [w, r - depth / line.normal(v)[1]];
};

/** Cut off this much farther in than the wall beside the edge, mm: as what is sunk is itself. */
const CUT_SLACK = 2e-3;

/** v as far as anything sunk reaches where it was cut off at the seat's edge. */
function withinWall({ reach }: SurfaceLine): (v: number) => number {
  const most = Math.max(0, reach - LEAST_WALL - CUT_SLACK);
  return (v) => Math.min(most, Math.max(-most, v));
}

/** v from the region's lowest to its highest place, mm. */
function acrossOf([low, high]: readonly number[]): number[] {
  return Array.from({ length: PLACES + 1 }, (_, i) => low + ((high - low) * i) / PLACES);
}

/** Points nearer than this to a surface are on it, mm: rounding. */
const ON_SURFACE = 1e-6;

/** The cross-section's edges that are not the surface's. */
function otherSides({ polyline }: Profile, line: SurfaceLine): readonly (readonly [Point2, Point2])[] {
  const on = polyline.map(([w, r]) => {
    const [v, h] = line.inverse(w, r);
    return Math.abs(h) <= ON_SURFACE && Math.abs(v) <= line.reach + ON_SURFACE;
  });
  return polyline.flatMap((point, i) => {
    const next = (i + 1) % polyline.length;
    return on[i] && on[next] ? [] : [[point, polyline[next]] as const];
  });
}

function distanceTo(edges: readonly (readonly [Point2, Point2])[], [w, r]: Point2): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [[aw, ar], [bw, br]] of edges) {
    const [dw, dr] = [bw - aw, br - ar];
    const [pw, pr] = [w - aw, r - ar];
    const t = nearestShare(pw, pr, dw, dr);
    least = Math.min(least, Math.hypot(pw - t * dw, pr - t * dr));
  }
  return least;
}

/** Whether places next to each other on the seat are still in order at a depth: where not, normals have met. */
function goesForward(places: readonly number[], line: SurfaceLine, floorAt: (v: number) => Point2): boolean {
  return places.every((v, i) => {
    if (i === 0) return true;
    const [[aw, ar], [bw, br]] = [floorAt(places[i - 1]), floorAt(v)];
    const [nw, nr] = line.normal((places[i - 1] + v) / 2);
    return (bw - aw) * nr - (br - ar) * nw > 0;
  });
}
