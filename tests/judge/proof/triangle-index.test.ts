import { describe, expect, it } from "vitest";
import type { Point3 } from "../../../src/base/math/point.js";
import { HeightIndex } from "../../../src/judge/proof/height-index.js";
import { TriangleIndex } from "../../../src/judge/proof/triangle-index.js";

/** A grid of points with heights, its squares parted into two triangles each; `share` of them are left out. */
function grid(columns: number, rows: number, leaveOut: (square: number) => boolean = () => false) {
  const points: Point3[] = [];
  for (let j = 0; j <= rows; j++) {
    for (let i = 0; i <= columns; i++) points.push([i * 0.11 + 3, j * 0.07 - 2, Math.sin(i) + Math.cos(2 * j)]);
  }
  const triangles: number[] = [];
  for (let square = 0; square < columns * rows; square++) {
    if (leaveOut(square)) continue;
    const a = square + Math.floor(square / columns);
    triangles.push(a, a + 1, a + columns + 2, a, a + columns + 2, a + columns + 1);
  }
  return { points, triangles };
}

/** The same triangles as polygons of their own. */
const polygonsOf = ({ points, triangles }: { points: readonly Point3[]; triangles: readonly number[] }) =>
  Array.from({ length: triangles.length / 3 }, (_, i) => [[0, 1, 2].map((k) => points[triangles[3 * i + k]])]);

/** A fan of long thin triangles, each of which reaches over most of the box. */
function fan(count: number) {
  const points: Point3[] = [[0, 0, 1]];
  for (let i = 0; i <= count; i++) points.push([10 * Math.cos(i / count), 10 * Math.sin(i / count), i % 3]);
  return { points, triangles: Array.from({ length: count }, (_, i) => [0, i + 1, i + 2]).flat() };
}

describe("triangles sorted into cells", () => {
  it.each([
    ["a grid", grid(40, 25)],
    ["a grid with holes", grid(40, 25, (square) => square % 7 === 3)],
    ["one row", grid(90, 1)],
    ["one triangle", { points: grid(1, 1).points, triangles: [0, 1, 3] }],
    ["a fan of slivers", fan(300)],
  ])("tell of %s what its polygons do", (_, mesh) => {
    const index = new TriangleIndex(mesh.points, mesh.triangles);
    const polygons = new HeightIndex(polygonsOf(mesh));
    const { left, right, low, high } = index.box;
    expect(index.box).toEqual({ ...polygons.box });
    let [inside, outside] = [0, 0];
    for (let i = 0; i < 3000; i++) {
      const u = left - 0.3 + (right - left + 0.6) * ((i * 0.618034) % 1);
      const v = low - 0.3 + (high - low + 0.6) * ((i * 0.754878) % 1);
      const [found, told] = [index.at(u, v), polygons.at(u, v)];
      if (told === undefined) outside++;
      else inside++;
      expect(found === undefined).toBe(told === undefined);
      if (told !== undefined) expect(found?.low).toBeCloseTo(told.low, 9);
    }
    expect(inside).toBeGreaterThan(10);
    expect(outside).toBeGreaterThan(100);
  });

  it("tell of nothing nothing, nor of what has no width", () => {
    expect(new TriangleIndex([], []).at(0, 0)).toBeUndefined();
    const flat: Point3[] = [
      [1, 0, 0],
      [1, 1, 0],
      [1, 2, 0],
    ];
    expect(new TriangleIndex(flat, [0, 1, 2]).at(1, 1)).toBeUndefined();
  });
});
