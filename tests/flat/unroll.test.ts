import { expect, it } from "vitest";
import type { Point2 } from "../../src/base/math/point.js";
import type { RunLine } from "../../src/flat/runs.js";
import { unrollLine } from "../../src/flat/unroll.js";

const points: readonly Point2[] = [
  [0, 1],
  [2, -1],
  [6, 1],
];

/** Length of a line that does not close. */
const lengthOf = (line: readonly Point2[]) =>
  line.slice(1).reduce((sum, [u, v], i) => sum + Math.hypot(u - line[i][0], v - line[i][1]), 0);

it("makes one strand of a strand, as much longer as it stands for more, each place once", () => {
  const [long, ...more] = unrollLine({ points, kind: "strand", even: true }, 3, 6);
  expect(more).toEqual([]);
  expect(long).toMatchObject({ kind: "strand", even: true });
  expect(long.points).toEqual([
    [0, 1],
    [2, -1],
    [6, 1],
    [8, -1],
    [12, 1],
    [14, -1],
    [18, 1],
  ]);
  expect(lengthOf(long.points)).toBeCloseTo(3 * lengthOf(points), 12);
});

it.each(["loop", "open"] as const)("copies a line that is %s, each a period on from the one before it", (kind) => {
  const line: RunLine = { points, kind, even: false, reverses: true };
  const lines = unrollLine(line, 3, 2.5);
  expect(lines).toHaveLength(3);
  lines.forEach((copy, n) => {
    expect(copy).toEqual({ ...line, points: points.map(([u, v]) => [u + 2.5 * n, v]) });
  });
});

it("is the line itself for one period", () => {
  for (const kind of ["strand", "loop", "open"] as const) {
    const line: RunLine = { points, kind, even: false };
    expect(unrollLine(line, 1, 6)).toEqual([line]);
  }
});
