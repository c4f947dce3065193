/**
 * Where a closed line that is its own mirror image begins: on the band that tapers only the middle line v = 0 is a mirror of
 * every tile, so beads that are spaced from there are as symmetric as the line.
 */
import type { Point2 } from "../base/math/point.js";
import type { RunLine } from "./runs.js";

/** A point this near to the middle line is on it, mm: a step of the grid. */
const ON_MIDDLE = 1e-6;

/** A loop that its symmetry brings onto itself, begun where it first meets the middle line; other lines as they are. */
export function startOnMiddle(line: RunLine): RunLine {
  if (line.kind !== "loop" || !line.even) return line;
  const { points } = line;
  const at = points.findIndex(([, v], i) => Math.abs(v) <= ON_MIDDLE || crosses(v, after(points, i)[1]));
  if (at === -1) return line;
  const [[au, av], [bu, bv]] = [points[at], after(points, at)];
  if (Math.abs(av) <= ON_MIDDLE) return { ...line, points: [...points.slice(at), ...points.slice(0, at)] };
  const start: Point2 = [au + (av / (av - bv)) * (bu - au), 0];
  return { ...line, points: [start, ...points.slice(at + 1), ...points.slice(0, at + 1)] };
}

function after(points: readonly Point2[], i: number): Point2 {
  return points[(i + 1) % points.length];
}

function crosses(a: number, b: number): boolean {
  return Math.abs(b) > ON_MIDDLE && a < 0 !== b < 0;
}
