/**
 * The outlines of raised and cut bodies over a span of tiles: the periods of each put side by side and united, so that
 * no seam shows, and cut at the span's ends and the seat's edges.
 */
import type { Point2 } from "../base/math/point.js";
import { ringBox } from "../flat/box.js";
import { fromGrid, type GridPath, gridFor, shiftPath } from "../flat/grid.js";
import { clipWithin, unite } from "../flat/polygons.js";
import type { FlatBody } from "./flat-body.js";

export interface TileOutlinesOptions {
  /** mm */
  readonly tileWidth: number;
  /** mm */
  readonly seatLength: number;
  /** Tiles from the origin. */
  readonly tiles: number;
  /** Where the first tile's left border meets the middle line, (u, v), mm. */
  readonly origin: Point2;
}

/** A flat region as drawn: outer rings counter-clockwise, holes clockwise; (u, v), mm. */
export type FlatRings = readonly (readonly Point2[])[];

/** The part of a body's outline that lies on the tiles, with u from the first one's left border. */
export function tileOutlines(
  shape: Pick<FlatBody, "outline" | "seam" | "period">,
  { tileWidth, seatLength, tiles, origin: [left, middle] }: TileOutlinesOptions,
): FlatRings {
  const grid = gridFor(tileWidth);
  // The points are grid steps in mm, so rounding brings them back exactly and the periods meet.
  const period = shape.outline.flat().map((ring): GridPath => {
    return ring.map(([u, v]) => ({ x: Math.round((u - left) * grid.scale), y: Math.round((v - middle) * grid.scale) }));
  });
  const box = { left: 0, right: tiles * grid.tile, low: -seatLength / 2, high: seatLength / 2 };
  const sides = shape.seam ?? (shape.period === undefined ? undefined : [0, shape.period]);
  const rings =
    sides === undefined
      ? period
      : copies(
          period,
          sides.map((u) => (u - left) * grid.scale),
          box.right,
        );
  const within = { ...box, low: box.low * grid.scale, high: box.high * grid.scale };
  return clipWithin(unite(rings), within, 0).map((ring) => fromGrid(grid, ring));
}

/** What comes again from one side to the other, in every place where it reaches between 0 and `end`; grid steps. */
function copies(period: readonly GridPath[], [left, right]: readonly number[], end: number): GridPath[] {
  const width = Math.round(right - left);
  const boxes = period.map(ringBox);
  const first = -Math.ceil(Math.max(...boxes.map((box) => box.right)) / width);
  const last = Math.ceil((end - Math.min(...boxes.map((box) => box.left))) / width);
  return Array.from({ length: last - first + 1 }, (_, i) =>
    period.map((ring) => shiftPath(ring, (first + i) * width, 0)),
  ).flat();
}
