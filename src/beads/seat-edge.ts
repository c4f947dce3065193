/**
 * Relief at the seat's edge: not beyond it, and where rails stand there, on beneath them.
 */
import { AnnuletError } from "../base/errors.js";
import { showLength } from "../base/units.js";
import type { GridPath, GridPoint } from "../flat/grid.js";
import type { GridRegion } from "../flat/polygons.js";
import { type Strip, steps } from "../flat/strip.js";

/** Art within this of the seat's edge touches it, mm. */
const EDGE_REACH = 2e-3;

/** Art that ends this near to a rail goes on beneath it, mm: so narrow a gap can be neither printed nor cast. */
const NO_GAP = 0.01;

/** @throws AnnuletError `region-outside-seat` where the region reaches beyond the seat's edge */
export function requireOnSeat(strip: Strip, region: GridRegion, path: string): void {
  let most = 0;
  for (const ring of region) for (const { y } of ring) most = Math.max(most, Math.abs(y));
  const over = (most - strip.halfSeat) / strip.grid.scale;
  if (over <= EDGE_REACH) return;
  throw new AnnuletError({
    code: "region-outside-seat",
    message: `the region reaches ${showLength(over)} beyond the edge of the seat`,
    path,
    value: Number((most / strip.grid.scale).toFixed(3)),
    allowed: `within ${showLength(strip.halfSeat / strip.grid.scale)} of the seat's middle line`,
    hint: "draw it lower, make its ribbon narrower, or make the band wider",
  });
}

/** Whether a rail stands at the lower and at the upper edge. */
export type RailSides = readonly [low: boolean, high: boolean];

/** How the rails rise from the seat, mm. */
export interface RailFoot {
  /** From the seat's edge to the rail's wall: the width of the fillet between them. */
  readonly root: number;
  /** From there to the band's side. */
  readonly width: number;
}

/** How far relief that reaches the seat's edge goes on within the rail, mm, beyond its own rounding. */
const UNDER_RAIL = 0.05;

/** It goes no farther than this share of the rail, so that it does not come out at the band's side (chosen). */
const RAIL_SHARE = 0.5;

/**
 * How far relief goes on beyond the seat's edge, mm: through the fillet at the rail's root, so that no slot stays above
 * that, and on into the rail. What lies beyond the edge is no more than is needed to fill the fillet: a volume by area and
 * height ends at the edge.
 *
 * @param foot default an upright rail, as wide as need be
 * @param edge mm of the top's edge that the rail should hide
 */
export function underBy(foot: RailFoot | undefined, edge: number): number {
  const into = UNDER_RAIL + edge;
  return foot === undefined ? into : foot.root + Math.min(into, RAIL_SHARE * foot.width);
}

/** A side goes on beneath the rail by at most this many times as far along the band as across it. */
const STEEPEST_LEAN = 2;

/** Sides that come nearer to each other beneath the rail may each take this share of the way between them. */
const CONVERGENCE = 0.4;

/**
 * Moves what lies on the seat's edge on beneath the rail, so that the body's end does not lie in the rail's wall. Sides
 * that lead to the edge go on straight, so that nothing changes on the seat.
 *
 * @param under mm beyond the edge, 0 or more
 * @param rails whether a rail stands at the lower and at the upper edge
 */
export function reachUnder(
  strip: Strip,
  region: GridRegion,
  under: number,
  [low, high]: RailSides = [true, true],
): GridRegion {
  if (under === 0) return region;
  const limit = strip.halfSeat - steps(strip, NO_GAP);
  const beyond = Math.round(strip.halfSeat + steps(strip, under));
  return region.map((ring) =>
    ring.map((point, i) => {
      const stays = Math.abs(point.y) < limit || !(point.y < 0 ? low : high);
      return stays ? point : moveUnder(ring, i, limit, beyond);
    }),
  );
}

function moveUnder(ring: GridPath, i: number, limit: number, beyond: number): GridPoint {
  const point = ring[i];
  const side = Math.sign(point.y);
  const onEdge = (other: GridPoint) => other.y * side >= limit;
  const neighbours = [ring[(i + ring.length - 1) % ring.length], ring[(i + 1) % ring.length]];
  const [mate] = neighbours.filter(onEdge);
  const [inner] = neighbours.filter((other) => !onEdge(other));
  // A tip, or the middle of a span of the edge, goes straight across.
  if (mate === undefined || inner === undefined) return { x: point.x, y: side * beyond };
  const across = beyond - point.y * side;
  const lean = ((point.x - inner.x) / ((point.y - inner.y) * side)) * across;
  const towards = Math.sign(lean) === Math.sign(mate.x - point.x);
  const most = Math.min(
    STEEPEST_LEAN * across,
    towards ? CONVERGENCE * Math.abs(mate.x - point.x) : Number.POSITIVE_INFINITY,
  );
  return { x: Math.round(point.x + Math.sign(lean) * Math.min(Math.abs(lean), most)), y: side * beyond };
}
