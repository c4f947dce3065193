import fc from "fast-check";
import { expect, it } from "vitest";
import { triangleAreas } from "../../src/mesh/triangle-areas.js";
import { SEED } from "../flat/strips.js";
import { box, meshOf } from "../support/meshes.js";

it("adds up to a box's surface, 2 (ab + bc + ca), each half of a side", () => {
  const areas = [...triangleAreas(box([2, 3, 5], [100, -7, 1]))];
  expect(areas.reduce((sum, area) => sum + area)).toBeCloseTo(62, 10);
  expect(areas.map((area) => Math.round(1e9 * area) / 1e9).sort((a, b) => a - b)).toEqual([
    3, 3, 3, 3, 5, 5, 5, 5, 7.5, 7.5, 7.5, 7.5,
  ]);
});

it("is Heron's √(s (s − a) (s − b) (s − c)) for any triangle, and 0 without height", () => {
  const place = fc.tuple(...Array.from({ length: 3 }, () => fc.integer({ min: -50, max: 50 })));
  fc.assert(
    fc.property(place, place, place, (p, q, r) => {
      const [a, b, c] = [
        Math.hypot(...q.map((x, k) => x - r[k])),
        Math.hypot(...p.map((x, k) => x - r[k])),
        Math.hypot(...p.map((x, k) => x - q[k])),
      ];
      const s = (a + b + c) / 2;
      const heron = Math.sqrt(Math.max(0, s * (s - a) * (s - b) * (s - c)));
      expect(triangleAreas(meshOf([p, q, r], [[0, 1, 2]]))[0]).toBeCloseTo(heron, 2);
    }),
    { seed: SEED },
  );
  expect(
    triangleAreas(
      meshOf(
        [
          [0, 0, 0],
          [1, 1, 1],
          [3, 3, 3],
        ],
        [[0, 1, 2]],
      ),
    )[0],
  ).toBe(0);
});
