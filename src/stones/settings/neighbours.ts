/**
 * Two stones side by side, seen in the frame half way between them.
 */
import type { Point2, Point3 } from "../../base/math/point.js";
import { PointGrid } from "../../base/math/point-grid.js";
import { type Frame, fromSpace, intoSpace } from "../frame.js";
import { between } from "./frame.js";
import { type GirdleShape, girdleBeside } from "./girdle-shape.js";

/** A stone where it stands. */
export interface StandingStone {
  readonly shape: GirdleShape;
  readonly frame: Frame;
}

/** Stones of which the outlines so far outside their girdles may meet, as numbers, the smaller first. */
export function pairsWithin(stones: readonly StandingStone[], by: number): (readonly [number, number])[] {
  const reach = ({ shape }: StandingStone) => Math.hypot(shape.length, shape.width) / 2 + by;
  const grid = new PointGrid<number>(2 * Math.max(...stones.map(reach)));
  const pairs: (readonly [number, number])[] = [];
  stones.forEach((stone, i) => {
    for (const j of grid.near(stone.frame.at)) {
      const other = stones[j];
      const [ax, ay, az] = stone.frame.at;
      const [bx, by_, bz] = other.frame.at;
      if (Math.hypot(ax - bx, ay - by_, az - bz) < reach(stone) + reach(other)) pairs.push([j, i]);
    }
    grid.add(stone.frame.at, i);
  });
  return pairs;
}

/** A stone's outline so far outside its girdle, as seen in another frame. */
export function outlineIn(frame: Frame, { shape, frame: own }: StandingStone, by: number, tolerance: number): Point2[] {
  return girdleBeside(shape, by, tolerance, "hollow").map(([x, y]) => {
    const [u, v] = fromSpace(frame, intoSpace(own, [x, y, 0]));
    return [u, v];
  });
}

/** mm from a stone's girdle to a point in space, seen along the stone's axis; negative inside. */
export function fromGirdle({ shape, frame }: StandingStone, point: Point3): number {
  const [x, y] = fromSpace(frame, point);
  if (shape.radius !== undefined) return Math.hypot(x, y) - shape.radius;
  return fromOutline(shape.girdle, [x, y]);
}

/** mm from a convex outline to a point, negative inside. */
export function fromOutline(outline: readonly Point2[], [x, y]: Point2): number {
  let [inside, least] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  let [ax, ay] = outline[outline.length - 1];
  for (const [bx, by] of outline) {
    const [dx, dy] = [bx - ax, by - ay];
    const length = Math.hypot(dx, dy);
    inside = Math.max(inside, ((x - ax) * dy - (y - ay) * dx) / length);
    const share = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / length ** 2));
    least = Math.min(least, Math.hypot(x - ax - share * dx, y - ay - share * dy));
    [ax, ay] = [bx, by];
  }
  return inside <= 0 ? inside : least;
}

/** The frame between two stones of a list. */
export function frameBetween(stones: readonly StandingStone[], [i, j]: readonly [number, number]): Frame | undefined {
  return between(stones[i].frame, stones[j].frame);
}
