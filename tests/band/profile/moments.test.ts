import { describe, expect, test } from "vitest";
import { bandSurface, bandVolume, meanSeatRadius, outlineMoments } from "../../../src/band/profile/moments.js";
import { buildProfile } from "../../../src/band/profile/profile.js";
import type { Segment } from "../../../src/base/math/curve.js";
import { arcBySagitta, flattenSegment } from "../../../src/base/math/curve.js";
import { spec } from "./specs.js";

test("torus R = 2, r = 1: V = 4π² (Larson & Edwards, Calculus §7.6), S = 8π² (Pappus)", () => {
  const circle: Segment[] = [{ kind: "arc", centre: [0, 2], radius: 1, start: 0.3, sweep: 2 * Math.PI }];
  expect(bandVolume({ outline: circle })).toBeCloseTo(4 * Math.PI ** 2, 12);
  expect(bandSurface({ outline: circle })).toBeCloseTo(8 * Math.PI ** 2, 12);
});

test("flat band D 16.51, t 1.8, w 6: V = π(D + t)wt = 621.2437, S = 2π(D + t)(w + t) = 897.3520", () => {
  const sharp = spec({
    width: 6,
    thickness: 1.8,
    bore: { form: "flat", edge: 0 },
    outside: { form: "flat", edge: 0 },
  });
  const profile = buildProfile(sharp, 16.51 / 2, 0.01);
  expect(bandVolume(profile)).toBeCloseTo(621.2437, 4);
  expect(bandSurface(profile)).toBeCloseTo(897.352, 4);
  expect(meanSeatRadius(profile)).toBeCloseTo(16.51 / 2 + 1.8, 12);
});

test("half ellipse w 4, h 1.6, D 16.51: V = 282.1621, drawn with one A", () => {
  const drawn = spec({
    width: 4,
    thickness: 1.6,
    bore: { form: "flat", edge: 0 },
    outside: { form: "free", path: "M -2 0 A 2 1.6 0 0 0 2 0" },
  });
  expect(bandVolume(buildProfile(drawn, 16.51 / 2, 1e-6))).toBeCloseTo(282.1621, 3);
});

test("half circle drawn with one A: exact, V = 2π (r̄ A) with the half disc's centroid 4r / 3π", () => {
  const drawn = spec({
    width: 4,
    thickness: 2,
    bore: { form: "flat", edge: 0 },
    outside: { form: "free", path: "M -2 0 A 2 2 0 0 0 2 0" },
  });
  const profile = buildProfile(drawn, 8, 0.1);
  expect(profile.outline).toHaveLength(2);
  expect(bandVolume(profile)).toBeCloseTo(2 * Math.PI * (8 + 8 / (3 * Math.PI)) * 2 * Math.PI, 10);
});

test("napkin ring: what a bore of length L leaves of a ball has V = πL³ / 6", () => {
  // Ball of radius 5, hole of radius 4: L = 6, and the outside is a circle about the centre.
  const drawn = spec({
    width: 6,
    thickness: 1,
    bore: { form: "flat", edge: 0 },
    outside: { form: "free", path: "M -3 0 A 5 5 0 0 0 3 0" },
  });
  expect(bandVolume(buildProfile(drawn, 4, 0.1))).toBeCloseTo((Math.PI * 6 ** 3) / 6, 10);
  const domed = spec({
    width: 6,
    thickness: 1,
    bore: { form: "flat", edge: 0 },
    outside: { form: "domed", rise: 0.5, edge: 0 },
  });
  // The same ring's dome stands on walls half a millimetre high, over a flatter arc: less than a full rectangle.
  expect(bandVolume(buildProfile(domed, 4, 0.1))).toBeLessThan(Math.PI * (25 - 16) * 6);
});

describe("arcs of every size and turn agree with very fine chords", () => {
  test.each([0.001, 0.2, -0.2, 1, 2.5, -2.5])("sagitta %d over a chord of 4", (sagitta) => {
    const arc = arcBySagitta([2, 9], [-2, 9.5], sagitta);
    const end: Segment = { kind: "line", from: [-2, 9.5], to: [2, 9] };
    const points = [[2, 9] as const, ...flattenSegment(arc, 1e-9)];
    const chords = points.slice(1).map((to, i): Segment => ({ kind: "line", from: points[i], to }));
    const exact = outlineMoments([arc, end]);
    const fine = outlineMoments([...chords, end]);
    expect(exact.area).toBeCloseTo(fine.area, 6);
    expect(exact.firstMomentR).toBeCloseTo(fine.firstMomentR, 6);
    expect(exact.length).toBeCloseTo(fine.length, 6);
    expect(exact.lengthMomentR).toBeCloseTo(fine.lengthMomentR, 6);
  });

  test("a very flat arc keeps its digits: area 2cs / 3 for small sagittas s", () => {
    const arc = arcBySagitta([3, 9], [-3, 9], 2e-5);
    const { area } = outlineMoments([arc, { kind: "line", from: [-3, 9], to: [3, 9] }]);
    // The centre lies 225 m away: its own rounding is all that is lost.
    expect(area).toBeCloseTo((2 / 3) * 6 * 2e-5, 8);
  });
});
