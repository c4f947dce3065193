// Covers: src/band/profile/thickness-of.ts, src/measure/outermost.ts
/** Thickness as it measures, where the drawn number lies above the section or relief stands above it. */
import { expect, it } from "vitest";
import { build } from "../../../src/ring/build.js";

const ring = (profile: object, rest: object = {}) => ({
  annulet: 1,
  tolerance: 0.03,
  size: { diameter: 17 },
  profile: { width: 5, thickness: 2, bore: { form: "flat", edge: 0 }, ...profile },
  ...rest,
});

it("is that of a rounded ridge's nose, not of the sharp edge that is drawn", async () => {
  // Two straight sides from 2 − 1.4 up to 2 over 2.5 mm each, rounded by a circle of radius 0.5: its top lies
  // 0.5 (1 / cos α − 1) below the sharp edge, tan α = 1.4 / 2.5.
  const outside = { form: "knife", rise: 1.4, ridge: 0.5, edge: 0 };
  const { report, mesh } = await build(ring({ outside }));
  const lower = 0.5 * (Math.hypot(1, 1.4 / 2.5) - 1);
  expect(report.band.thickness).toBeCloseTo(2 - lower, 6);
  const radii = Array.from({ length: mesh.positions.length / 3 }, (_, i) =>
    Math.hypot(mesh.positions[3 * i], mesh.positions[3 * i + 1]),
  );
  expect(report.band.overall).toBe(Math.max(...radii) - 8.5);
  expect(Math.abs(report.band.overall - report.band.thickness)).toBeLessThan(0.03);
  expect(report.allowances.finished.thickness).toBe(report.band.thickness);
});

it("is the drawn one where the section reaches it, and relief that stands above is told beside it", async () => {
  const pattern = {
    fit: { hold: "band", repeats: 6 },
    regions: [{ unit: "mm", path: "M 2 -1 h 2 v 2 h -2 Z", height: 0.4 }],
  };
  const { report } = await build(ring({ outside: { form: "flat", edge: 0 } }, { pattern }));
  expect(report.band.thickness).toBe(2);
  expect(Math.abs(report.band.overall - 2.4)).toBeLessThan(0.03);
});
