/**
 * Walking along a bead line by its flat length: where a length lies, and on over the end of a line that closes.
 */
import type { Point2 } from "../base/math/point.js";
import type { RunLine } from "./runs.js";

/** A line by flat arc length, mm. */
export interface Walk {
  /** Vertices; the last of a loop is its first again. */
  readonly points: readonly Point2[];
  /** Arc length at each vertex. */
  readonly stations: readonly number[];
  readonly length: number;
  /** The point at an arc length; before the start and past the end a cyclic line goes on, an open one stays. */
  readonly pointAt: (s: number) => Point2;
  /** The arc length as index of a side and share of that side, 0 up to the number of sides. */
  readonly locate: (s: number) => number;
}

/** Whether the line goes on where it ends: into itself or into the next tile. */
export function isCyclic({ kind }: Pick<RunLine, "kind">): boolean {
  return kind !== "open";
}

/** The line's vertices; a loop's first again at its end. */
export function verticesOf({ points, kind }: Pick<RunLine, "points" | "kind">): readonly Point2[] {
  return kind === "loop" ? [...points, points[0]] : points;
}

/** Lays out a line by its flat length. */
export function walkLine(line: Pick<RunLine, "points" | "kind">): Walk {
  const points = verticesOf(line);
  let sum = 0;
  const stations = points.map(([u, v], i) => {
    if (i > 0) sum += Math.hypot(u - points[i - 1][0], v - points[i - 1][1]);
    return sum;
  });
  const length = sum;
  const cyclic = isCyclic(line) && length > 0;
  const [first, last] = [points[0], points[points.length - 1]];
  const locate = (s: number) => {
    const inside = cyclic ? s - length * Math.floor(s / length) : Math.min(Math.max(s, 0), length);
    return sideAt(stations, inside);
  };
  const pointAt = (s: number): Point2 => {
    const rounds = cyclic ? Math.floor(s / length) : 0;
    const at = locate(s);
    const i = Math.min(Math.floor(at), points.length - 2);
    const t = at - i;
    return [
      points[i][0] + t * (points[i + 1][0] - points[i][0]) + rounds * (last[0] - first[0]),
      points[i][1] + t * (points[i + 1][1] - points[i][1]) + rounds * (last[1] - first[1]),
    ];
  };
  return { points, stations, length, pointAt, locate };
}

/** Where a value lies between rising stations: index and share. */
export function sideAt(stations: ArrayLike<number>, value: number): number {
  let [low, high] = [0, stations.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (stations[middle] <= value) low = middle;
    else high = middle;
  }
  const span = stations[high] - stations[low];
  return low + (span === 0 ? 0 : Math.min(1, Math.max(0, (value - stations[low]) / span)));
}
