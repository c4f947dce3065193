// Covers: src/gems/ellipse.ts
import { describe, expect, it } from "vitest";
import { polygonArea } from "../../src/base/math/polygon.js";
import { cuts, findCut } from "../../src/gems/cuts/catalogue.js";
import { ellipsePerimeter } from "../../src/gems/ellipse.js";
import { outlineArea, outlinePerimeter, outlinePoints } from "../../src/gems/outline.js";

describe.each(cuts)("the outline of $name", (cut) => {
  it("has the area and length that its corners come to ever closer, and encloses every chord", () => {
    const width = 3;
    const size = { length: width * cut.ratio.usual, width };
    const outline = cut.outline(cut.name === "tapered-baguette" ? { ...size, narrow: 2 } : size);
    const [area, perimeter] = [outlineArea(outline), outlinePerimeter(outline)];
    for (const tolerance of [1e-2, 1e-4, 1e-6]) {
      const points = outlinePoints(outline, tolerance);
      const length = points.reduce((sum, [x, y], i) => {
        const [nx, ny] = points[(i + 1) % points.length];
        return sum + Math.hypot(nx - x, ny - y);
      }, 0);
      const missing = area - polygonArea(points);
      // Straight outlines miss nothing but rounding; no chord lies farther in than the tolerance.
      expect(missing).toBeGreaterThan(-1e-12);
      expect(missing).toBeLessThan(tolerance * perimeter + 1e-12);
      expect(perimeter - length).toBeGreaterThan(-1e-12);
      expect(perimeter - length).toBeLessThan(4 * tolerance * Math.PI + 1e-12);
    }
  });
});

describe("closed forms", () => {
  it("are those of circle, ellipse and lens", () => {
    const circle = findCut("round").outline({ length: 4, width: 4 });
    expect(outlineArea(circle)).toBeCloseTo(4 * Math.PI, 12);
    expect(outlinePerimeter(circle)).toBeCloseTo(4 * Math.PI, 12);
    expect(outlineArea(findCut("oval").outline({ length: 6, width: 4 }))).toBeCloseTo(6 * Math.PI, 12);
    // Two circles of radius r, a way d apart, share 2 r² acos(d / 2r) − d √(4 r² − d²) / 2.
    const [length, width] = [6, 3];
    const r = (length ** 2 / 4 + width ** 2 / 4) / width;
    const d = 2 * r - width;
    const lens = 2 * r * r * Math.acos(d / (2 * r)) - (d * Math.sqrt(4 * r * r - d * d)) / 2;
    expect(outlineArea(findCut("marquise").outline({ length, width }))).toBeCloseTo(lens, 12);
  });

  it("of an ellipse's length agree with a sum over many chords, and with a circle and a line", () => {
    const chords = (a: number, b: number, count: number) => {
      // The trapezoidal rule converges faster than any power for a periodic integrand.
      const speeds = Array.from({ length: count }, (_, i) => {
        const t = (2 * Math.PI * i) / count;
        return Math.hypot(a * Math.sin(t), b * Math.cos(t));
      });
      return (speeds.reduce((sum, speed) => sum + speed, 0) * 2 * Math.PI) / count;
    };
    for (const [a, b] of [
      [1, 1],
      [2, 1],
      [1, 3],
      [5, 1],
    ]) {
      expect(ellipsePerimeter(a, b)).toBeCloseTo(chords(a, b, 400), 11);
    }
    expect(ellipsePerimeter(1, 1e-9)).toBeCloseTo(4, 7);
  });
});
