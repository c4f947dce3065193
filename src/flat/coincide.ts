/**
 * Whether two lines are the same line, wherever each begins and whichever way it runs.
 */
import { nearestShare } from "../base/math/nearest-share.js";
import { ringBox } from "./box.js";
import type { GridPath, GridPoint } from "./grid.js";

/** Vertices of one line that are looked for on the other. */
const SAMPLES = 12;

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

/** Whether vertices taken evenly from `line` lie on `path`. */
export function liesOn(line: GridPath, path: GridPath, closed: boolean, reach: number): boolean {
  const count = Math.min(SAMPLES, line.length);
  for (let i = 0; i < count; i++) {
    const at = count === 1 ? 0 : Math.round((i * (line.length - 1)) / (count - 1));
    if (!passes(path, line[at], closed, reach)) return false;
  }
  return true;
}

/** Whether the path comes within `reach` of a point. */
function passes(path: GridPath, point: GridPoint, closed: boolean, reach: number): boolean {
  for (let i = closed ? 0 : 1; i < path.length; i++) {
    const [a, b] = [path[i === 0 ? path.length - 1 : i - 1], path[i]];
    if (distanceToSide(point, a, b) <= reach) return true;
  }
  return path.length === 1 && distanceToSide(point, path[0], path[0]) <= reach;
}

function distanceToSide(point: GridPoint, a: GridPoint, b: GridPoint): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const [px, py] = [point.x - a.x, point.y - a.y];
  const share = nearestShare(px, py, dx, dy);
  return Math.hypot(px - share * dx, py - share * dy);
}
