// Covers: src/stones/settings/hollow-bodies.ts, src/stones/settings/flush.ts, src/stones/settings/stacked.ts, src/stones/settings/offset-outline.ts, src/stones/settings/girdle-shape.ts, src/stones/settings/shape-of.ts, src/stones/settings/setting-bodies.ts
import { describe, expect, test } from "vitest";
import { CUT_NAMES } from "../../../src/gems/stone.js";
import { stoneOf } from "../../../src/gems/stone-of.js";
import { checkSolid } from "../../../src/judge/gate.js";
import { signedVolume } from "../../../src/mesh/volume.js";
import { flushSetting } from "../../../src/stones/settings/flush.js";
import { bearingOf, type HollowOptions, ROOM } from "../../../src/stones/settings/hollow.js";
import { circleCorners, offsetOutline } from "../../../src/stones/settings/offset-outline.js";
import { shapeOf } from "../../../src/stones/settings/shape-of.js";

const tolerance = 0.01;
const options: HollowOptions & { readonly ready: "full" } = {
  ready: "full",
  tolerance,
  pilot: 0.6,
  opening: undefined,
  around: { surface: 0.25, bore: -2.2, above: 0.8 },
};

/** How much larger a polygon round a circle is than the circle. */
function around(radius: number): number {
  const corners = circleCorners(1.5 * radius, tolerance);
  return (corners * Math.tan(Math.PI / corners)) / Math.PI;
}

const frustum = (height: number, a: number, b: number) => (Math.PI * height * (a * a + a * b + b * b)) / 3;

describe("a round stone's hollow", () => {
  const shape = shapeOf(stoneOf({ size: 1.5 }), tolerance);
  const { edge, depth } = bearingOf(shape, tolerance);
  const wide = 0.75 + ROOM;
  const pilot = 0.6 * 0.75;
  const cone = depth * (1 - pilot / wide);

  test("is a cylinder on a cone on a pilot, in closed form", () => {
    const [hollow] = flushSetting(shape, options).hollows;
    const floor = -shape.band - shape.pavilion - 0.1;
    const expected =
      frustum(0.8 - edge, wide, wide) + frustum(cone, pilot, wide) + frustum(edge - cone - floor, pilot, pilot);
    expect(checkSolid(hollow).closed).toBe(true);
    expect(signedVolume(hollow)).toBeCloseTo(expected * around(0.75), 9);
  });

  test("opens into the bore with a broken edge", () => {
    const [hollow] = flushSetting(shape, { ...options, opening: { size: 0.6, edge: 0.1, round: true } }).hollows;
    const mouth = frustum(0.3, pilot + 0.3, pilot) + frustum(edge - cone + 2.1, pilot, pilot);
    const expected = frustum(0.8 - edge, wide, wide) + frustum(cone, pilot, wide) + mouth;
    expect(signedVolume(hollow)).toBeCloseTo(expected * around(0.75), 9);
  });

  test("is the pilot alone where the setter cuts the bearing", () => {
    const [hollow] = flushSetting(shape, { ...options, ready: "pilot" }).hollows;
    const floor = -shape.band - shape.pavilion - 0.1;
    expect(signedVolume(hollow)).toBeCloseTo(frustum(0.8 - floor, pilot, pilot) * around(0.75), 9);
  });

  test("has the pavilion's angle", () => {
    expect(depth / wide).toBeCloseTo(Math.tan((40.75 * Math.PI) / 180), 3);
  });
});

describe.each(CUT_NAMES)("the hollow of %s", (cut) => {
  const stone = stoneOf({ cut, size: 3 });
  const shape = shapeOf(stone, tolerance);

  test.each([false, true])(
    "is closed, convex above the pilot, and nowhere nearer to the stone than its room (open: %s)",
    (open) => {
      const opening = open ? { size: 0.4, edge: 0.1, round: true } : undefined;
      const { hollows } = flushSetting(shape, {
        ...options,
        pilot: 0.6,
        opening,
        around: { ...options.around, bore: -3 },
      });
      for (const hollow of hollows) {
        expect(checkSolid(hollow)).toMatchObject({ closed: true, genus: 0 });
        expect(signedVolume(hollow)).toBeGreaterThan(0);
      }
      expect(hollows.length).toBe(open && cut !== "round" ? 2 : 1);
      const { edge } = bearingOf(shape, tolerance);
      const { positions: p, triangles } = hollows[0];
      let nearest = Number.NEGATIVE_INFINITY;
      // Sides of bearing and wall, from the bearing's edge down and up: corners of the stone lie inside of each plane.
      for (let i = 0; i < triangles.length; i += 3) {
        const [a, b, c] = [0, 1, 2].map((k) => [0, 1, 2].map((q) => p[3 * triangles[i + k] + q]));
        if (Math.max(a[2], b[2], c[2]) < edge || Math.min(a[2], b[2], c[2]) > edge) continue;
        const [u, v] = [b, c].map((point) => point.map((x, q) => x - a[q]));
        const normal = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
        const length = Math.hypot(...normal);
        for (const corner of shape.corners) {
          const out = normal.reduce((sum, n, q) => sum + n * (corner[q] - a[q]), 0) / length;
          if (corner[2] <= 0) nearest = Math.max(nearest, out);
        }
      }
      expect(nearest).toBeLessThan(-ROOM + 1e-6);
    },
  );
});

test("an outline moved out keeps its corners, and its sides lie so far outside", () => {
  const square = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  expect(offsetOutline(square, 0.5).flat()).toEqual([-1.5, -1.5, 1.5, -1.5, 1.5, 1.5, -1.5, 1.5]);
});
