/** Covers `narrowed-line.ts` too, through the surface that it makes. */
import { describe, expect, it } from "vitest";
import { makeBand } from "../../../src/band/make-band.js";
import { taperedSurface } from "../../../src/band/surface/tapered.js";
import { TOP, TURN } from "../../../src/base/units.js";
import { spec } from "../profile/specs.js";

const FORMS = [
  { form: "flat", edge: 0.2 },
  { form: "domed", rise: 0.5 },
  { form: "concave", dip: 0.3 },
] as const;

/** Step of the differences, mm. */
const STEP = 1e-4;

type Point = readonly [number, number, number];

const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Point, b: Point) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const length = (a: Point) => Math.hypot(...a);

describe.each(FORMS)("the seat of a band that tapers: $form", (outside) => {
  const sizes = { width: 8, thickness: 2.2, taper: { width: 4, thickness: 1.4, between: [{ angle: 20, width: 7 }] } };
  const band = makeBand(spec({ ...sizes, outside }), 8.75, 0.005);
  const wrap = taperedSurface({
    chainAt: (angle) => band.sectionAt(angle).seat,
    trueAt: TOP,
    referenceRadius: 10.5,
    startAngle: -0.6,
  });
  const places = Array.from({ length: 19 }, (_, i): Point => {
    return [0.37 + (i * wrap.round) / 19, (((i * 7) % 19) / 19 - 0.5) * 0.9 * wrap.seatLength, (i % 3) * 0.2];
  });
  /** How a place moves in space for a millimetre along the band, and for one across it. */
  const slopesAt = ([u, v, h]: Point) => {
    const along = minus(wrap.forward(u + STEP, v, h), wrap.forward(u - STEP, v, h));
    const across = minus(wrap.forward(u, v + STEP, h), wrap.forward(u, v - STEP, h));
    return [along, across].map(([x, y, z]): Point => [x / (2 * STEP), y / (2 * STEP), z / (2 * STEP)]);
  };

  it("has its normal square to both of its slopes, of length 1 and outward", () => {
    for (const [u, v] of places) {
      const normal = wrap.normal(u, v);
      const [along, across] = slopesAt([u, v, 0]);
      expect(length(normal)).toBeCloseTo(1, 12);
      expect(Math.abs(dot(normal, along))).toBeLessThan(1e-5);
      expect(Math.abs(dot(normal, across))).toBeLessThan(1e-5);
      expect(dot(normal, wrap.forward(u, v, 0))).toBeGreaterThan(0);
    }
  });

  it("stretches as its slopes are long", () => {
    for (const [u, v, h] of places) {
      const [along] = slopesAt([u, v, h]);
      const [, across] = slopesAt([u, v, 0]);
      const stretch = wrap.stretchAt(u, v, h);
      expect(stretch.along).toBeCloseTo(length(along), 6);
      expect(stretch.across).toBeCloseTo(length(across), 6);
    }
  });

  it("comes back from space to the flat point", () => {
    for (const place of places) {
      const [u, v, h] = wrap.inverse(...wrap.forward(...place));
      const turn = Math.abs(u - place[0]) % wrap.round;
      expect(Math.min(turn, wrap.round - turn)).toBeLessThan(1e-9);
      expect(Math.abs(v - place[1])).toBeLessThan(1e-9);
      expect(Math.abs(h - place[2])).toBeLessThan(1e-9);
    }
  });

  it("is true across where it is said to be, and turns once round", () => {
    expect(wrap.stretchAt(wrap.uAt(TOP), 0.3, 0).across).toBeCloseTo(1, 9);
    expect(wrap.angleAt(wrap.round) - wrap.angleAt(0)).toBeCloseTo(TURN, 12);
  });
});
