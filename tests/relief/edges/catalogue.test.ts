// Covers: src/relief/edges/*
import { describe, expect, it } from "vitest";
import type { EdgeName } from "../../../src/design/pattern/edge.js";
import { EDGES } from "../../../src/relief/edges/index.js";

const names = Object.keys(EDGES) as EdgeName[];

/** Area under a lobe's line, mm². */
const areaUnder = (points: readonly (readonly [number, number])[]) =>
  points.slice(1).reduce((sum, [x, out], i) => sum + ((out + points[i][1]) / 2) * (x - points[i][0]), 0);

/** Areas of lobes w wide and d deep (any handbook of geometry; the wave's is that of half a cosine's period). */
const AREAS: Record<EdgeName, (w: number, d: number) => number> = {
  scallop: (w, d) => {
    const r = (w * w) / (8 * d) + d / 2;
    return r * r * Math.acos((r - d) / r) - (r - d) * Math.sqrt(2 * r * d - d * d);
  },
  wave: (w, d) => (w * d) / 2,
  teeth: (w, d) => (w * d) / 2,
  steps: (w, d) => (w * d) / 2,
};

describe.each(names)("%s", (name) => {
  const { draw, deepest } = EDGES[name];

  it.each([
    [1, 0.3, 0.005],
    [0.4, 0.05, 0.001],
    [3, 1.2, 0.02],
  ])(
    "of %s mm, %s deep, goes from end to end, nowhere back, the same from either end, with its area",
    (width, depth, tolerance) => {
      const points = draw({ width, depth, tolerance });
      expect(points[0]).toEqual([0, 0]);
      const [endX, endOut] = points[points.length - 1];
      expect(endX).toBeCloseTo(width, 12);
      expect(endOut).toBeCloseTo(0, 12);
      points.forEach(([x, out], i) => {
        if (i > 0) expect(x).toBeGreaterThanOrEqual(points[i - 1][0] - 1e-12);
        expect(out).toBeGreaterThanOrEqual(-1e-12);
        const [mirrorX, mirrorOut] = points[points.length - 1 - i];
        expect(x + mirrorX).toBeCloseTo(width, 9);
        expect(out).toBeCloseTo(mirrorOut, 9);
      });
      const most = Math.max(...points.map(([, out]) => out));
      expect(most).toBeLessThanOrEqual(depth + 1e-12);
      expect(most).toBeGreaterThan(depth - 2 * tolerance);
      expect(Math.abs(areaUnder(points) - AREAS[name](width, depth))).toBeLessThan(width * tolerance);
    },
  );

  it("keeps its shape up to its largest depth", () => {
    const points = draw({ width: 1, depth: deepest(1), tolerance: 0.001 });
    for (let i = 1; i < points.length; i++) expect(points[i][0]).toBeGreaterThanOrEqual(points[i - 1][0] - 1e-9);
  });
});
