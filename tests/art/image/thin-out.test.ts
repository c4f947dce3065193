// Covers: src/art/image/settle.ts, src/art/image/flat-triangles.ts
/** Thinned surfaces: true to the grid, without gaps, few triangles where it is flat. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bordersOf } from "../../../src/art/image/flat-triangles.js";
import type { HeightField } from "../../../src/art/image/height-field.js";
import { settle } from "../../../src/art/image/settle.js";
import { thinOut } from "../../../src/art/image/thin-out.js";
import { revolvedSurface } from "../../../src/band/surface/revolved.js";
import { checkSolid } from "../../../src/judge/gate.js";
import { raiseField } from "../../../src/relief/image/raise-field.js";
import { buildRelief } from "../../../src/solids/relief.js";
import { plainBody, SEED } from "../../flat/strips.js";

const LEVEL = 0.005;

function fieldOf(
  columns: number,
  rows: number,
  repeats: boolean,
  height: (x: number, y: number) => number,
): HeightField {
  const heights = new Float64Array((columns + 1) * (rows + 1));
  for (let y = 0; y <= rows; y++) {
    for (let x = 0; x <= columns; x++) heights[y * (columns + 1) + x] = height(repeats ? x % columns : x, y);
  }
  return {
    left: 0,
    right: columns * 0.1,
    low: -0.05 * rows,
    high: 0.05 * rows,
    columns,
    rows,
    heights,
    repeats,
    copies: 3,
    level: LEVEL,
  };
}

/** Random fields: some bumps over nothing, or over a floor. */
const fields = fc
  .record({
    repeats: fc.boolean(),
    floor: fc.constantFrom<number>(0, 0, 0.004, 0.006, 0.2),
    bumps: fc.array(
      fc.tuple(
        fc.integer({ min: 0, max: 31 }),
        fc.integer({ min: 0, max: 24 }),
        fc.integer({ min: -3, max: 40 }),
        fc.integer({ min: 1, max: 9 }),
      ),
      { maxLength: 8 },
    ),
    noise: fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 40, maxLength: 40 }),
    noisy: fc.boolean(),
  })
  .map(({ repeats, floor, bumps, noise, noisy }) =>
    fieldOf(32, 24, repeats, (x, y) => {
      const away = (bx: number) => (repeats ? Math.min(Math.abs(x - bx), 32 - Math.abs(x - bx)) : Math.abs(x - bx));
      const sum = bumps.reduce(
        (total, [bx, by, high, wide]) => total + (high / 100) * Math.max(0, 1 - Math.hypot(away(bx), y - by) / wide),
        floor,
      );
      return Math.max(0, sum + (noisy ? noise[(7 * x + 11 * y) % noise.length] / 1000 : 0));
    }),
  );

/** The surface's height at each grid point that it covers. */
function heightsOf(field: HeightField, triangles: readonly number[]): Map<number, number> {
  const stride = field.columns + 1;
  const found = new Map<number, number>();
  for (let i = 0; i < triangles.length; i += 3) {
    const corners = [0, 1, 2].map((k) => triangles[i + k]);
    const [[ax, ay], [bx, by], [cx, cy]] = corners.map((place) => [place % stride, Math.floor(place / stride)]);
    const area = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
    expect(area).toBeGreaterThan(0);
    for (let y = Math.min(ay, by, cy); y <= Math.max(ay, by, cy); y++) {
      for (let x = Math.min(ax, bx, cx); x <= Math.max(ax, bx, cx); x++) {
        const shares = [
          (bx - x) * (cy - y) - (cx - x) * (by - y),
          (cx - x) * (ay - y) - (ax - x) * (cy - y),
          (ax - x) * (by - y) - (bx - x) * (ay - y),
        ];
        if (shares.some((share) => share < 0)) continue;
        const height = shares.reduce((sum, share, k) => sum + (share / area) * there(field, corners[k]), 0);
        found.set(y * stride + x, height);
      }
    }
  }
  return found;
}

const there = ({ heights, level }: HeightField, place: number) => (heights[place] > level ? heights[place] : 0);

describe("thinning", () => {
  it("keeps every sample within the tolerance", () => {
    fc.assert(
      fc.property(fields, fc.constantFrom(0, 0.001, 0.01), (field, tolerance) => {
        const found = heightsOf(field, thinOut(field, tolerance));
        expect(found.size).toBe(field.heights.length);
        for (const [place, height] of found)
          expect(Math.abs(height - there(field, place))).toBeLessThan(tolerance + 1e-12);
      }),
      { seed: SEED, numRuns: 30 },
    );
  });

  it("covers level ground with four triangles a block, and the borders of the field finely", () => {
    const level = thinOut(
      fieldOf(64, 64, true, () => 0.3),
      0.001,
    );
    // The inner blocks: 8 by 8 less the lowest and the highest row.
    expect(level.length / 3).toBeGreaterThanOrEqual(4 * 8 * 6);
    expect(level.length / 3).toBeLessThan(2 * 64 * 64 * 0.2);
  });
});

describe("what is raised of a field", () => {
  const wrap = revolvedSurface({
    line: [{ kind: "line", from: [-3, 10], to: [3, 10] }],
    referenceRadius: (3 * 3.2) / (2 * Math.PI),
    startAngle: 0,
  });

  it("is a closed body, its foot of the same outline, whatever the field", () => {
    let built = 0;
    fc.assert(
      fc.property(fields, (raw) => {
        const field = settle(raw);
        if (!field.heights.some((height) => height > LEVEL)) return;
        const shape = raiseField(field, { ...plainBody, tolerance: 0.005 });
        const { top, foot } = shape.surface as NonNullable<typeof shape.surface>;
        // Along the seam the next tile closes each of them by itself.
        const flat = (rings: ReturnType<typeof bordersOf>) =>
          rings
            .flat()
            .filter(([u]) => !shape.seam?.includes(u))
            .map(([u, v]) => `${u} ${v}`)
            .sort();
        expect(flat(bordersOf(foot))).toEqual(flat(bordersOf(top)));
        const mesh = buildRelief(shape, { wrap, facets: 96, stations: [], repeats: shape.copies ?? 1, sink: 0.1 });
        const { faults } = checkSolid(mesh, { components: shape.outline.length });
        expect(faults.filter(({ code }) => code !== "components")).toEqual([]);
        built++;
      }),
      { seed: SEED, numRuns: 40 },
    );
    expect(built).toBeGreaterThan(20);
  });

  it("has no specks and no pinholes of noise about the level", () => {
    const field = settle(
      fieldOf(64, 64, false, (x, y) => (x < 32 ? 0.004 : 0.0065) + ((x * 31 + y * 17) % 7 === 0 ? 0.004 : -0.001)),
    );
    expect(raiseField(field, { ...plainBody, tolerance: 0.005 }).outline.flat()).toHaveLength(1);
  });
});
