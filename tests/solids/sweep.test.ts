import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandVolume } from "../../src/band/profile/moments.js";
import type { Point2 } from "../../src/base/math/point.js";
import { TURN } from "../../src/base/units.js";
import { checkSolid } from "../../src/judge/gate.js";
import { surfaceArea } from "../../src/measure/measure.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { sweepBand } from "../../src/solids/sweep.js";
import { SEED } from "../band/profile/specs.js";
import { profileOf, SMOOTH_FORMS } from "../band/surface/forms.js";

/** Share of a circle's area that its inscribed n-gon covers; a swept solid has that share of its body's volume. */
const inscribed = (n: number) => (n / TURN) * Math.sin(TURN / n);

const rectangle = (width: number, low: number, high: number): Point2[] => [
  [-width / 2, high],
  [-width / 2, low],
  [width / 2, low],
  [width / 2, high],
];

describe("sweeping a cross-section", () => {
  it("has the volume of a flat band by Pappus, π(D + t)wt (D 16.51, t 1.8, w 6), times the inscribed polygon's share", () => {
    const outline = rectangle(6, 16.51 / 2, 16.51 / 2 + 1.8);
    for (const facets of [24, 96, 360]) {
      const band = sweepBand(() => outline, { facets, startAngle: 0.3 });
      expect(signedVolume(band)).toBeCloseTo(Math.PI * (16.51 + 1.8) * 6 * 1.8 * inscribed(facets), 9);
    }
    const fine = sweepBand(() => outline, { facets: 20_000, startAngle: 0 });
    expect(signedVolume(fine)).toBeCloseTo(621.2437, 4);
    expect(surfaceArea(fine)).toBeCloseTo(897.352, 3);
  });

  it("covers the shares (n / 2π) sin(2π / n) of 96 and 360 facets, worked out beforehand", () => {
    expect(inscribed(96)).toBeCloseTo(0.9992862, 7);
    expect(inscribed(360)).toBeCloseTo(0.9999492, 7);
  });

  it("has the volume of a half-elliptic band by Pappus (w 4, h 1.6, D 16.51: 282.1621)", () => {
    const steps = 2000;
    const outline = Array.from({ length: steps + 1 }, (_, i): Point2 => {
      const angle = Math.PI - (Math.PI * i) / steps;
      return [-2 * Math.cos(angle), 16.51 / 2 + (i === 0 || i === steps ? 0 : 1.6 * Math.sin(angle))];
    });
    expect(signedVolume(sweepBand(() => outline, { facets: 3600, startAngle: 0 }))).toBeCloseTo(282.1621, 2);
  });

  it("has the volume of a torus (R 2, r 1: 4π², Larson & Edwards, Calculus, §7.6) but for both polygons' shares", () => {
    const [facets, sides] = [500, 400];
    const outline = Array.from({ length: sides }, (_, i): Point2 => {
      const angle = (TURN * i) / sides;
      return [Math.cos(angle), 2 + Math.sin(angle)];
    });
    const torus = signedVolume(sweepBand(() => outline, { facets, startAngle: 1 }));
    expect(torus).toBeCloseTo(4 * Math.PI ** 2 * inscribed(facets) * inscribed(sides), 9);
  });

  it.each(SMOOTH_FORMS)("is a ring for the outside $name: genus 1, E = 3V, F = 2V, volume by Pappus", (form) => {
    const profile = profileOf(form, 0.00002);
    const facets = 25;
    const band = sweepBand(() => profile.polyline, { facets, startAngle: 0.1 });
    const check = checkSolid(band);
    expect(check.closed).toBe(true);
    expect(check.genus).toBe(1);
    expect(check.vertices).toBe(facets * profile.polyline.length);
    expect(check.edges).toBe(3 * check.vertices);
    expect(check.triangles).toBe(2 * check.vertices);
    expect(check.volume / (bandVolume(profile) * inscribed(facets))).toBeCloseTo(1, 4);
  });

  it("turns with its start angle", () => {
    const outline = rectangle(3, 8, 10);
    fc.assert(
      fc.property(fc.double({ min: -7, max: 7, noNaN: true }), fc.integer({ min: 3, max: 60 }), (angle, facets) => {
        const [still, turned] = [0, angle].map((startAngle) => sweepBand(() => outline, { facets, startAngle }));
        expect(turned.triangles).toEqual(still.triangles);
        expect(signedVolume(turned)).toBeCloseTo(signedVolume(still), 9);
        const [x, y] = still.positions;
        expect(turned.positions[0]).toBeCloseTo(x * Math.cos(angle) - y * Math.sin(angle), 9);
      }),
      { seed: SEED, numRuns: 40 },
    );
  });
});
