/**
 * Whether two lines are the same line, wherever each begins and whichever way it runs.
 */
import { coverOf, sidesOf } from "../base/math/cover.js";
import type { Point2 } from "../base/math/point.js";
import { ringBox } from "./box.js";
import type { GridPath } from "./grid.js";

/** A line whose box is known, for quick comparing. */
export interface BoxedLine {
  readonly path: GridPath;
  readonly box: ReturnType<typeof ringBox>;
}

export function boxed(path: GridPath): BoxedLine {
  return { path, box: ringBox(path) };
}

/**
 * Whether both lines lie in each other, within `reach` grid steps.
 *
 * @param closed whether the last point goes on to the first
 */
export function coincide(a: BoxedLine, b: BoxedLine, closed: boolean, reach: number): boolean {
  const sides = ["left", "right", "low", "high"] as const;
  if (sides.some((side) => Math.abs(a.box[side] - b.box[side]) > reach)) return false;
  return liesOn(a.path, b.path, closed, reach) && liesOn(b.path, a.path, closed, reach);
}

/** Whether all of `line`, its whole sides, lies on `path`. */
export function liesOn(line: GridPath, path: GridPath, closed: boolean, reach: number): boolean {
  return sidesOf(pointsOf(line), closed).every(coverOf(sidesOf(pointsOf(path), closed), { reach }));
}

function pointsOf(path: GridPath): Point2[] {
  return path.map(({ x, y }): Point2 => [x, y]);
}
