import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { areDistinctRounded, farthestOf, stepOf } from "../../src/mesh/distinct-images.js";
import { roundDistinctPoints } from "../../src/mesh/merge.js";
import { type Turned, turnedImages } from "../../src/mesh/turned.js";

const TURN = 2 * Math.PI;

/** Points of a unit, each turned to so many places, with triangles that do not matter. */
function turnedPoints(points: readonly (readonly number[])[], units: number): Turned {
  const positions = Array.from({ length: units }, (_, k) => {
    const [cos, sin] = [Math.cos((TURN * k) / units), Math.sin((TURN * k) / units)];
    return points.flatMap(([x, y, z]) => [x * cos - y * sin, x * sin + y * cos, z]);
  });
  const triangles = Array.from({ length: units }, (_, k) => [0, 1, 2].map((i) => k * points.length + i));
  const mesh = { positions: Float64Array.from(positions.flat()), triangles: Uint32Array.from(triangles.flat()) };
  return turnedImages(mesh, units) as Turned;
}

const far = [
  [9, 0, 1],
  [9, 1, -1],
  [10, 0.5, 0],
];
const round = (radius: number, angle: number, z: number) => [radius * Math.cos(angle), radius * Math.sin(angle), z];

describe("steps of single precision", () => {
  it.each([1, 1.5, 8, 10.25, 15.9, 16, 0.3])("above %f", (size) => {
    const above = new Float32Array([size]);
    new Uint32Array(above.buffer)[0]++;
    expect(stepOf(size)).toBe(above[0] - Math.fround(size));
  });

  it("reach to the farthest coordinate", () => {
    expect(farthestOf(turnedPoints(far, 5))).toBeCloseTo(Math.hypot(10, 0.5), 12);
    expect(farthestOf(turnedPoints([...far, [8, 0, -30]], 5))).toBe(30);
  });
});

describe("points of images", () => {
  it("far from each other stay apart", () => {
    for (const units of [2, 9, 60]) expect(areDistinctRounded(turnedPoints(far, units))).toBe(true);
  });

  it.each([
    ["in a unit", round(10, 0.3, 0.5), round(10 + 1e-9, 0.3, 0.5)],
    ["beside the plane where angles begin", round(10, 1e-9, 0.5), round(10, -1e-9, 0.5)],
    [
      "across the seam, the one at the start and the other at the end",
      round(10, 1e-10, 0.5),
      round(10, TURN / 9 - 1e-10, 0.5),
    ],
    ["by way of a unit farther on", round(10, 0.2, 0.5), round(10, 0.2 + (4 * TURN) / 9, 0.5 + 1e-10)],
  ])("nearly the same %s become one", (_, a, b) => {
    expect(areDistinctRounded(turnedPoints([...far, a, b], 9))).toBe(false);
  });

  it("are looked at in every image: of near ones some copies may fall together and others not", () => {
    // Between both, along x, lies the border of what rounds to one number and to the next: turned, it lies elsewhere.
    const step = stepOf(10);
    const apart = (shift: number) =>
      turnedPoints([...far, [10 + (0.5 - shift) * step, 0, 0.5], [10 + (0.5 + shift) * step, 0, 0.5]], 9);
    let [some, none] = [0, 0];
    for (let shift = 0.01; shift < 1; shift += 0.05) {
      const turned = apart(shift);
      const { positions: p } = turned.mesh;
      const distinct = roundDistinctPoints(p) !== undefined;
      expect(areDistinctRounded(turned)).toBe(distinct);
      if (distinct) none++;
      else if (Math.fround(p[9]) !== Math.fround(p[12])) some++;
    }
    // In some the first copy's stay apart and another's do not; in some they do in all.
    expect(Math.min(some, none)).toBeGreaterThan(0);
  });

  it("leave it to the whole beside the axis, and where too many are near each other", () => {
    expect(areDistinctRounded(turnedPoints([...far, [0.1, 0, 0]], 5))).toBeUndefined();
    const crowd = Array.from({ length: 40 }, (_, i) => [10, 0, 0.5 + i * 1e-8]);
    expect(areDistinctRounded(turnedPoints([...far, ...crowd], 5))).toBeUndefined();
  });

  it("are as the whole finds them, of random points within a few steps of each other", () => {
    const near = fc.tuple(
      fc.integer({ min: 0, max: 6 }),
      ...[0, 1, 2].map(() => fc.double({ min: -3, max: 3, noNaN: true })),
    );
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 12 }), fc.array(near, { minLength: 3, maxLength: 9 }), (units, offs) => {
        const step = stepOf(10);
        const points = offs.map(([k, x, y, z]) => {
          const [cos, sin] = [Math.cos((TURN * k) / units), Math.sin((TURN * k) / units)];
          const [px, py] = [10 + x * step, 0.7 + y * step];
          return [px * cos - py * sin, px * sin + py * cos, 0.25 + z * step];
        });
        const turned = turnedPoints(points, units);
        expect(areDistinctRounded(turned)).toBe(roundDistinctPoints(turned.mesh.positions) !== undefined);
      }),
      { numRuns: 300 },
    );
  });
});
