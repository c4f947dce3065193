/**
 * A bead line of one period as one of several: for comparing it with lines that come again less often.
 */
import type { Point2 } from "../base/math/point.js";
import type { RunLine } from "./runs.js";

/**
 * The lines that stand for `line` and the periods after it. A strand becomes one longer strand; others are copied.
 *
 * @param times how many periods, 1 or more, whole
 * @param period mm along the band
 */
export function unrollLine(line: RunLine, times: number, period: number): RunLine[] {
  const copy = (n: number) => line.points.map(([u, v]): Point2 => [u + n * period, v]);
  const copies = Array.from({ length: times }, (_, n) => copy(n));
  if (line.kind !== "strand") return copies.map((points) => ({ ...line, points }));
  return [{ ...line, points: copies.flatMap((points, n) => (n === 0 ? points : points.slice(1))) }];
}
