// Covers: src/beads/bead-track.ts
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { revolvedSurface } from "../../src/band/surface/revolved.js";
import type { BandSurface } from "../../src/band/surface/surface.js";
import type { Point2, Point3 } from "../../src/base/math/point.js";
import { type BeadRunOptions, placeOnSeat, placeRound, repeatBeads, requireAtMost } from "../../src/beads/bead-run.js";
import type { RunLine } from "../../src/flat/runs.js";
import { failureOf, SEED } from "../band/profile/specs.js";
import { profileOf, SMOOTH_FORMS } from "../band/surface/forms.js";

const options: BeadRunOptions = { diameter: 0.4, pitch: 1.05, embed: 0.5, height: 0.3, most: 10_000, path: "beads[0]" };

const wraps = SMOOTH_FORMS.map((form): { name: string; wrap: BandSurface } => ({
  name: form.name,
  wrap: revolvedSurface({ line: profileOf(form).seat, referenceRadius: 10, startAngle: 0.2 }),
}));

const distance = (a: Point3, b: Point3) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** The wrapped line as a polyline 50 times finer than the beads need, with arc length. */
function trace(points: readonly Point2[], wrap: BandSurface, h: number): { point: Point3; s: number }[] {
  const fine: { point: Point3; s: number }[] = [];
  let s = 0;
  for (let i = 1; i < points.length; i++) {
    const [[au, av], [bu, bv]] = [points[i - 1], points[i]];
    const count = Math.max(2, Math.ceil(Math.hypot(bu - au, bv - av) / 0.004));
    for (let k = i === 1 ? 0 : 1; k <= count; k++) {
      const point = wrap.forward(au + ((bu - au) * k) / count, av + ((bv - av) * k) / count, h);
      if (fine.length > 0) s += distance(fine[fine.length - 1].point, point);
      fine.push({ point, s });
    }
  }
  return fine;
}

/** Arc length of the traced point nearest to a bead's centre. */
function arcOf(line: readonly { point: Point3; s: number }[], centre: Point3): { s: number; off: number } {
  let best = { s: 0, off: Number.POSITIVE_INFINITY };
  for (const { point, s } of line) {
    const off = distance(point, centre);
    if (off < best.off) best = { s, off };
  }
  return best;
}

/** A wave that never comes near itself. */
const wave = fc
  .record({
    length: fc.double({ min: 2, max: 12, noNaN: true }),
    swing: fc.double({ min: 0.1, max: 1.4, noNaN: true }),
    from: fc.double({ min: 0, max: 20, noNaN: true }),
  })
  .map(({ length, swing, from }): Point2[] =>
    Array.from({ length: 25 }, (_, i) => [from + (length * i) / 24, swing * Math.sin(i / 3)]),
  );

const loop = fc
  .record({
    a: fc.double({ min: 0.5, max: 4, noNaN: true }),
    b: fc.double({ min: 0.5, max: 1.6, noNaN: true }),
    at: fc.double({ min: 5, max: 20, noNaN: true }),
  })
  .map(({ a, b, at }): Point2[] =>
    Array.from({ length: 40 }, (_, i) => [at + a * Math.cos((Math.PI * i) / 20), b * Math.sin((Math.PI * i) / 20)]),
  );

const bead = fc.record({
  diameter: fc.double({ min: 0.2, max: 0.8, noNaN: true }),
  pitch: fc.double({ min: 0.9, max: 2, noNaN: true }),
  embed: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
});

describe.each(wraps)("beads along a line on the seat: $name", ({ wrap }) => {
  it("stand at even arc length in space, both ends of an open line hit", () => {
    fc.assert(
      fc.property(wave, bead, (points, size) => {
        const run = placeOnSeat({ points, kind: "open", even: false }, wrap, { ...options, ...size });
        const line = trace(points, wrap, 0.3 + size.diameter * (0.5 - size.embed));
        const total = line[line.length - 1].s;
        const intervals = Math.max(1, Math.round(total / (size.pitch * size.diameter)));
        expect(run.beads).toHaveLength(intervals + 1);
        expect(run.spacing as number).toBeCloseTo(total / intervals, 3);
        expect(distance(run.beads[0].centre, line[0].point)).toBeLessThan(1e-9);
        expect(distance(run.beads[intervals].centre, line[line.length - 1].point)).toBeLessThan(1e-9);
        run.beads.forEach(({ centre, radius }, i) => {
          const { s, off } = arcOf(line, centre);
          expect(off).toBeLessThan(0.003);
          expect(Math.abs(s - (total * i) / intervals)).toBeLessThan(0.005);
          expect(radius).toBe(size.diameter / 2);
        });
      }),
      { seed: SEED, numRuns: 15 },
    );
  });

  it("close a loop without a seam", () => {
    fc.assert(
      fc.property(loop, bead, fc.boolean(), (points, size, even) => {
        const run = placeOnSeat({ points, kind: "loop", even }, wrap, { ...options, ...size });
        const line = trace([...points, points[0]], wrap, 0.3 + size.diameter * (0.5 - size.embed));
        const total = line[line.length - 1].s;
        const wanted = total / (size.pitch * size.diameter);
        const count = even ? 2 * Math.max(1, Math.round(wanted / 2)) : Math.max(1, Math.round(wanted));
        expect(run.beads).toHaveLength(count);
        expect(run.spacing as number).toBeCloseTo(total / count, 3);
        run.beads.forEach(({ centre }, i) => {
          expect(Math.abs(arcOf(line, centre).s - (total * i) / count) % total).toBeLessThan(0.005);
        });
      }),
      { seed: SEED, numRuns: 15 },
    );
  });
});

describe("how many beads", () => {
  const [{ wrap }] = wraps;
  const straight: RunLine = {
    points: [
      [1, 0],
      [5, 0],
    ],
    kind: "open",
    even: false,
  };

  it("honours a count", () => {
    expect(placeOnSeat(straight, wrap, { ...options, count: 7 }).beads).toHaveLength(7);
    expect(placeOnSeat({ ...straight, kind: "strand" }, wrap, { ...options, count: 7 }).beads).toHaveLength(7);
    expect(placeOnSeat({ ...straight, kind: "strand", even: true }, wrap, { ...options, count: 7 }).beads).toHaveLength(
      7,
    );
  });

  it("puts a single bead in the middle of an open line", () => {
    const { beads, spacing } = placeOnSeat(straight, wrap, { ...options, count: 1 });
    expect(spacing).toBeUndefined();
    expect(beads).toHaveLength(1);
    expect(distance(beads[0].centre, wrap.forward(3, 0, 0.3))).toBeLessThan(1e-9);
  });

  it("leaves a strand's end to the next tile's first bead", () => {
    const tile = (2 * Math.PI * wrap.referenceRadius) / 6;
    const strand: RunLine = {
      points: [
        [0, 0.5],
        [tile / 2, 0.9],
        [tile, 0.5],
      ],
      kind: "strand",
      even: false,
    };
    const { beads, spacing } = placeOnSeat(strand, wrap, options);
    const all = repeatBeads(beads, 6);
    expect(all).toHaveLength(6 * beads.length);
    all.forEach(({ centre }, i) => {
      // Chords are shorter than the arc between them, the more so where the strand bends.
      const chord = distance(centre, all[(i + 1) % all.length].centre);
      expect(chord).toBeLessThan((spacing as number) + 1e-9);
      expect(chord).toBeGreaterThan((spacing as number) * 0.95);
    });
  });

  it("refuses more than the limit before it makes any", () => {
    const many = { ...options, diameter: 0.1, pitch: 0.5, most: 50 };
    const failure = failureOf(() => placeOnSeat(straight, wrap, many));
    expect(failure).toMatchObject({ code: "too-many-beads", path: "beads[0]", allowed: "at most 50" });
    expect(
      failureOf(() =>
        placeRound(
          { at: () => ({ w: 0, radius: 10, outward: [0, 1] }), revolved: true, startAngle: 0 },
          { ...options, count: 1e15 },
        ),
      ),
    ).toMatchObject({ code: "too-many-beads", value: 1e15 });
    expect(() => requireAtMost(50, many)).not.toThrow();
  });
});

describe("beads round a circle", () => {
  // A circle that 151 beads would go round at a pitch of 1.1.
  const size = { ...options, diameter: 0.4, pitch: 1.1, embed: 0.5 };
  const round = (units: number, more: Partial<typeof size> = {}, radius = (151 * 0.44) / (2 * Math.PI)) =>
    placeRound(
      { at: () => ({ w: 0, radius, outward: [0, 1] }), revolved: true, startAngle: 0, units },
      { ...size, ...more },
    );

  it.each([
    [1, 151],
    [11, 154],
    [10, 150],
    [25, 150],
    [40, 151],
    [400, 151],
  ])("are as many in each of %i units where that changes their spacing by at most a fortieth: %i", (units, count) => {
    expect(round(units).beads).toHaveLength(count);
  });

  it("are as many as asked, whatever the units, and come no nearer than they touch", () => {
    expect(round(11, { count: 150 } as Partial<typeof size>).beads).toHaveLength(150);
    const touching = { pitch: 1.005 };
    expect(round(1, touching).beads).toHaveLength(165);
    // 168 in 14 units would overlap.
    expect(round(14, touching).beads).toHaveLength(165);
    expect(round(11, touching).beads).toHaveLength(165);
    expect(round(4, touching).beads).toHaveLength(164);
  });

  it("are even, on the circle of their centres, raised by what is not embedded", () => {
    const slope = fc.double({ min: -1, max: 1, noNaN: true });
    const radius = fc.double({ min: 7, max: 12, noNaN: true });
    fc.assert(
      fc.property(radius, slope, bead, (r, tilt, size) => {
        const outward: Point2 = [Math.sin(tilt), Math.cos(tilt)];
        const run = placeRound(
          { at: () => ({ w: 1.5, radius: r, outward }), revolved: true, startAngle: 0.7 },
          { ...options, ...size },
        );
        const rise = size.diameter * (0.5 - size.embed);
        const on = r + rise * Math.cos(tilt);
        const count = Math.max(1, Math.round((2 * Math.PI * on) / (size.pitch * size.diameter)));
        expect(run.beads).toHaveLength(count);
        expect(run.spacing as number).toBeCloseTo((2 * Math.PI * on) / count, 12);
        run.beads.forEach(({ centre: [x, y, z], outward: normal }, i) => {
          expect(Math.hypot(x, y)).toBeCloseTo(on, 10);
          expect(z).toBeCloseTo(1.5 + rise * Math.sin(tilt), 10);
          expect(x).toBeCloseTo(on * Math.cos(0.7 + (2 * Math.PI * i) / count), 9);
          expect(Math.hypot(...normal)).toBeCloseTo(1, 12);
        });
      }),
      { seed: SEED, numRuns: 60 },
    );
  });
});
