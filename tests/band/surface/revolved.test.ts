// Covers: src/band/surface/line.ts, src/band/surface/smooth-seat.ts, src/band/surface/seat-stations.ts
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildProfile } from "../../../src/band/profile/profile.js";
import { revolvedSurface } from "../../../src/band/surface/revolved.js";
import { seatStations } from "../../../src/band/surface/seat-stations.js";
import { requireSmoothSeat } from "../../../src/band/surface/smooth-seat.js";
import { chordCount, type Segment } from "../../../src/base/math/curve.js";
import { TURN } from "../../../src/base/units.js";
import { failureOf, SEED, spec } from "../profile/specs.js";
import { BORE_RADIUS, profileOf, SMOOTH_FORMS } from "./forms.js";

/** How far beyond the seat's ends points are tried, mm. */
const BEYOND = 0.1;

const share = fc.double({ min: 0, max: 1, noNaN: true });

describe.each(SMOOTH_FORMS)("the surface of a seat: $name", (form) => {
  const profile = profileOf(form);
  const wrap = revolvedSurface({ line: profile.seat, referenceRadius: 9.7, startAngle: -0.6 });
  const line = wrap.lineAt(wrap.startAngle);
  const around = TURN * wrap.referenceRadius;
  const point = fc.tuple(share, share, share).map(([a, b, c]): [number, number, number] => {
    const [down, up] = form.reach;
    return [a * around * 0.999999, (b - 0.5) * (wrap.seatLength + 2 * BEYOND), down + c * (up - down)];
  });

  it("comes back from space to the flat point", () => {
    fc.assert(
      fc.property(point, ([u, v, h]) => {
        const [bu, bv, bh] = wrap.inverse(...wrap.forward(u, v, h));
        const turn = Math.abs(bu - u) % around;
        expect(Math.min(turn, around - turn)).toBeLessThan(1e-9);
        expect(Math.abs(bv - v)).toBeLessThan(1e-9);
        expect(Math.abs(bh - h)).toBeLessThan(1e-9);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  it("comes back to space from the flat point", () => {
    fc.assert(
      fc.property(point, ([u, v, h]) => {
        const there = wrap.forward(u, v, h);
        const back = wrap.forward(...wrap.inverse(...there));
        expect(Math.hypot(...[0, 1, 2].map((k) => back[k] - there[k]))).toBeLessThan(1e-9);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it("stretches along the band by r / R, not at all across it, and stands h off the seat", () => {
    const step = 1e-5;
    fc.assert(
      fc.property(point, ([u, v, h]) => {
        const at = wrap.forward(u, v, h);
        const [, r] = line.point(v, h);
        const apart = (other: readonly number[]) => Math.hypot(...[0, 1, 2].map((k) => other[k] - at[k]));
        expect(apart(wrap.forward(u + step, v, h)) / step).toBeCloseTo(r / wrap.referenceRadius, 7);
        expect(apart(wrap.forward(u, v, 0))).toBeCloseTo(Math.abs(h), 9);
        const [on, next] = [line.point(v, 0), line.point(v + step, 0)];
        expect(Math.hypot(next[0] - on[0], next[1] - on[1]) / step).toBeCloseTo(1, 6);
        const [nw, nr] = line.normal(v);
        expect(Math.hypot(nw, nr)).toBeCloseTo(1, 12);
        const [w1, r1] = line.point(v, 1);
        expect(Math.hypot(w1 - on[0] - nw, r1 - on[1] - nr)).toBeLessThan(1e-12);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it("runs from low w to high w over the seat and points outward", () => {
    const half = wrap.seatLength / 2;
    expect(line.point(-half, 0)[0]).toBeLessThan(line.point(half, 0)[0]);
    expect(wrap.seatLength).toBeCloseTo(profile.seatLength, 12);
    for (const v of [-half, 0, half]) expect(line.normal(v)[1]).toBeGreaterThan(0.5);
  });

  it("has stations where the flattened band has vertices", () => {
    const tolerance = 0.002;
    const chords = (segment: Segment) =>
      segment.kind === "line" ? 1 : chordCount(segment.radius, segment.sweep, tolerance);
    const flat = profileOf(form, tolerance);
    const stations = seatStations(flat.seat, chords).map((v) => line.point(v, 0));
    const [first, last] = flat.seatSpan;
    const inner = flat.polyline.slice(first + 1, last).reverse();
    expect(stations.length).toBe(inner.length);
    stations.forEach(([w, r], i) => {
      expect(Math.hypot(w - inner[i][0], r - inner[i][1])).toBeLessThan(1e-9);
    });
  });

  it("is smooth enough for relief", () => {
    expect(() => requireSmoothSeat(profile.seat, "profile.outside")).not.toThrow();
  });
});

describe("a seat with a corner", () => {
  it("is refused with the corner's place", () => {
    const knife = buildProfile(
      spec({ width: 6, thickness: 2, outside: { form: "knife", ridge: 0 } }),
      BORE_RADIUS,
      0.01,
    );
    const failure = failureOf(() => requireSmoothSeat(knife.seat, "profile.outside"));
    expect(failure.code).toBe("seat-has-corner");
    expect(failure.path).toBe("profile.outside");
    expect(failure.message).toContain("w 0.000 mm");
  });

  it("is refused where a free outside was drawn with one", () => {
    const points = [
      [-3, 1.5],
      [1, 2],
      [3, 1.5],
    ];
    const drawn = buildProfile(spec({ width: 6, thickness: 2, outside: { form: "free", points } }), BORE_RADIUS, 0.01);
    expect(failureOf(() => requireSmoothSeat(drawn.seat, "x")).message).toContain("w 1.000 mm");
  });

  it("is allowed where the corner lies off the seat", () => {
    const points = [
      [-3, 1.5],
      [-1, 2],
      [1, 2],
      [3, 1.5],
    ];
    const outside = { form: "free", points, seat: [-1, 1] };
    const drawn = buildProfile(spec({ width: 6, thickness: 2, outside }), BORE_RADIUS, 0.01);
    expect(() => requireSmoothSeat(drawn.seat, "x")).not.toThrow();
  });
});

describe("a surface of revolution", () => {
  it.each<[string, unknown, string]>([
    ["nothing", undefined, "option-invalid"],
    ["no line", { referenceRadius: 9, startAngle: 0 }, "option-missing"],
    ["an empty line", { line: [], referenceRadius: 9, startAngle: 0 }, "option-invalid"],
    ["a radius of 0", { line: profileOf(SMOOTH_FORMS[0]).seat, referenceRadius: 0, startAngle: 0 }, "option-invalid"],
    [
      "a misspelt angle",
      { line: profileOf(SMOOTH_FORMS[0]).seat, referenceRadius: 9, startAngel: 0 },
      "option-missing",
    ],
  ])("is not made of %s", (_, options, code) => {
    expect(failureOf(() => revolvedSurface(options as never)).code).toBe(code);
  });
});
