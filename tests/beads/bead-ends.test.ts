// Across: how runs of beads end
/** How runs end: at corners, graduated and alternating, on a seat so wide that it is flat. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { revolvedSurface } from "../../src/band/surface/revolved.js";
import type { Point2 } from "../../src/base/math/point.js";
import { type BeadRunOptions, type PlacedRun, placeOnSeat, placeRound } from "../../src/beads/bead-run.js";
import type { RunLine } from "../../src/flat/runs.js";
import { SEED } from "../band/profile/specs.js";

/** So wide that 10 mm of it lie within 5e-5 mm of a plane; rounding is still 1e-9 mm. */
const WIDE = 1e6;

const flat = revolvedSurface({
  line: [{ kind: "line", from: [-50, WIDE], to: [50, WIDE] }],
  referenceRadius: WIDE,
  startAngle: 0,
});

const options: BeadRunOptions = { diameter: 0.4, pitch: 1, embed: 0.5, height: 0, most: 10_000, path: "beads[0]" };

const line = (points: readonly Point2[], kind: RunLine["kind"], even = false): RunLine => ({ points, kind, even });

function place(drawn: RunLine, more: Partial<BeadRunOptions> = {}): PlacedRun & { readonly at: Point2[] } {
  const run = placeOnSeat(drawn, flat, { ...options, ...more });
  const at = run.beads.map(({ centre }): Point2 => {
    const [u, v] = flat.inverse(...centre);
    return [u > WIDE ? u - 2 * Math.PI * WIDE : u, v];
  });
  return { ...run, at };
}

const apart = (a: Point2, b: Point2) => Math.hypot(a[0] - b[0], a[1] - b[1]);

function expectAt(found: readonly Point2[], wanted: readonly Point2[]): void {
  expect(found).toHaveLength(wanted.length);
  found.forEach((point, i) => {
    expect(apart(point, wanted[i])).toBeLessThan(1e-6);
  });
}

/** A star of five points, tips at radius 3 and hollows at 1.2: tips turn by more than 100°. */
const star = Array.from({ length: 10 }, (_, i): Point2 => {
  const angle = Math.PI / 2 + (Math.PI * i) / 5;
  const radius = i % 2 === 0 ? 3 : 1.2;
  return [radius * Math.cos(angle), radius * Math.sin(angle)];
});

const zigzag: Point2[] = [
  [0, 0],
  [1.5, 2],
  [3, 0],
  [4.5, 2],
];

const square: Point2[] = [
  [0, 0],
  [2.1, 0],
  [2.1, 2.1],
  [0, 2.1],
];

describe("beads on corners", () => {
  it("sit on each of a zig-zag, evenly between", () => {
    // Sides of 2.5 mm: round(2.5 / 0.4) = 6 gaps.
    const { at, spacing } = place(line(zigzag, "open"), { corners: "on" });
    const wanted = zigzag.slice(1).flatMap((b, side) => {
      const a = zigzag[side];
      return Array.from(
        { length: 6 },
        (_, i): Point2 => [a[0] + ((b[0] - a[0]) * i) / 6, a[1] + ((b[1] - a[1]) * i) / 6],
      );
    });
    expectAt(at, [...wanted, zigzag[3]]);
    expect(spacing).toBeCloseTo(2.5 / 6, 9);
  });

  it("sit on each of a square and a star", () => {
    const { at } = place(line(square, "loop", true), { corners: "on" });
    expect(at).toHaveLength(4 * 5);
    for (const corner of square) expect(at.filter((point) => apart(point, corner) < 1e-6)).toHaveLength(1);
    const stars = place(line(star, "loop"), { corners: "on", diameter: 0.25 });
    for (const tip of star) expect(stars.at.filter((point) => apart(point, tip) < 1e-6)).toHaveLength(1);
  });

  it("are only those that turn by more than the angle", () => {
    const bent = line(
      [
        [0, 0],
        [2, 0],
        [4, 0.9],
      ],
      "open",
    );
    const turn = Math.atan2(0.9, 2);
    const corner = (cornerAngle: number) =>
      place(bent, { corners: "on", cornerAngle }).at.some((point) => apart(point, [2, 0]) < 1e-6);
    expect(corner(turn - 0.01)).toBe(true);
    expect(corner(turn + 0.01)).toBe(false);
    expect(place(bent, { corners: "on" }).at).toEqual(place(bent).at);
  });

  it("whose neighbours crowd each other over a spike are told", () => {
    const spike = line(
      [
        [0, 0],
        [2, 0.3],
        [0, 0.6],
      ],
      "open",
    );
    expect(place(spike, { corners: "on" }).pinched).toHaveLength(1);
    expect(place(line(square, "loop"), { corners: "on" }).pinched).toEqual([]);
    const peak = line(
      [
        [0, 0],
        [0.3, 2],
        [0.6, 0],
      ],
      "strand",
    );
    expect(place(peak, { corners: "on" }).pinched).toHaveLength(2);
  });
});

describe("beads that keep clear of corners", () => {
  it("leave each side of a square alike, the gap over the corner as wide as the others", () => {
    const { at, spacing } = place(line(square, "loop"), { corners: "split" });
    const gap = spacing as number;
    // 2.1 = (n − 1 + √2) gaps, n = round(2.1 / 0.4 − √2 + 1) = 5.
    expect(gap).toBeCloseTo(2.1 / (4 + Math.SQRT2), 9);
    expect(at).toHaveLength(20);
    at.forEach((point, i) => {
      expect(apart(point, at[(i + 1) % 20])).toBeCloseTo(gap, 6);
    });
    for (const corner of square) {
      const near = at.map((point) => apart(point, corner)).sort((a, b) => a - b);
      expect(near[0]).toBeCloseTo(gap / Math.SQRT2, 6);
      expect(near[1]).toBeCloseTo(near[0], 6);
    }
  });

  it("leave no two nearer than the ratio, on a star and on any zig-zag", () => {
    const tooNear = ({ at, legs }: ReturnType<typeof place>, diameter: number) => {
      const least = Math.min(...legs.map(({ ratio }) => ratio)) * diameter;
      return at.some((a, i) => at.some((b, k) => k > i && apart(a, b) < least - 1e-6));
    };
    expect(tooNear(place(line(star, "loop"), { corners: "split", diameter: 0.2 }), 0.2)).toBe(false);
    const run = fc.record({
      turns: fc.array(fc.double({ min: -130, max: 130, noNaN: true }), { minLength: 1, maxLength: 1 }),
      sides: fc.tuple(fc.double({ min: 2.5, max: 5, noNaN: true }), fc.double({ min: 2.5, max: 5, noNaN: true })),
    });
    fc.assert(
      fc.property(run, ({ turns: [turn], sides: [a, b] }) => {
        const angle = (turn * Math.PI) / 180;
        const bent = line(
          [
            [0, 0],
            [a, 0],
            [a + b * Math.cos(angle), b * Math.sin(angle)],
          ],
          "open",
        );
        for (const corners of ["on", "split"] as const) {
          const placed = place(bent, { corners });
          if (corners === "on" && Math.abs(turn) > 119) continue;
          expect(tooNear(placed, 0.4)).toBe(false);
        }
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it("are even to a millionth within each leg", () => {
    const { at, legs } = place(line(zigzag, "open"), { corners: "split" });
    expect(legs).toHaveLength(3);
    const gaps = at.slice(1).map((point, i) => apart(at[i], point));
    expect(legs[0].spacing).toBeCloseTo(legs[2].spacing, 9);
    // Ends carry beads; the gaps over both corners are chords as wide as half a gap of either side each.
    const [first, middle] = legs;
    expect(gaps[0]).toBeCloseTo(first.spacing, 6);
    expect(Math.min(...gaps)).toBeCloseTo(Math.min(first.spacing, middle.spacing), 6);
    expectAt(at.map(([u, v]): Point2 => [4.5 - u, 2 - v]).reverse(), at);
  });
});

describe("graduated beads", () => {
  it("follow the recurrence along an open line", () => {
    const grown = place(
      line(
        [
          [0, 0],
          [8, 0],
        ],
        "open",
      ),
      { diameter: 0.3, to: 0.5, pitch: 1.05 },
    );
    // n = round(ln(b / a) / (b − a) · L / pitch)
    const n = Math.round((Math.log(0.5 / 0.3) / 0.2) * (8 / 1.05));
    expect(grown.beads).toHaveLength(n + 1);
    grown.beads.forEach(({ radius }, i) => {
      expect(2 * radius).toBeCloseTo(0.3 * (5 / 3) ** (i / n), 8);
    });
    grown.at.slice(1).forEach((point, i) => {
      const local = grown.beads[i].radius + grown.beads[i + 1].radius;
      expect(apart(grown.at[i], point) / local).toBeCloseTo(grown.legs[0].ratio, 6);
    });
  });

  it("grow half way round a loop and back, as symmetric as it", () => {
    const circle = Array.from({ length: 240 }, (_, i): Point2 => {
      const angle = (Math.PI * i) / 120;
      return [2 * Math.cos(angle), 2 * Math.sin(angle)];
    });
    for (const even of [false, true]) {
      const { at, beads } = place(line(circle, "loop", even), { diameter: 0.3, to: 0.5 });
      expect(beads[0].radius).toBeCloseTo(0.15, 12);
      const mirrored = at.map(([u, v]): Point2 => [u, -v]);
      mirrored.forEach((point, i) => {
        const twin = at.findIndex((other) => apart(point, other) < 1e-6);
        expect(beads[twin].radius).toBeCloseTo(beads[i].radius, 9);
      });
      const most = Math.max(...at.map(([u, v]) => (even ? Math.abs(v) : -u)));
      const largest = at[beads.reduce((best, { radius }, i) => (radius > beads[best].radius ? i : best), 0)];
      expect(even ? Math.abs(largest[1]) : -largest[0]).toBeCloseTo(most, 6);
      if (even) expect(beads.length % 2).toBe(0);
    }
  });

  it("go round a circle about the finger, each at the height its size asks for", () => {
    const run = placeRound(
      { at: () => ({ w: 1, radius: 9, outward: [0, 1] }), revolved: true, startAngle: -Math.PI / 2 },
      { ...options, diameter: 0.4, to: 0.8, embed: 0.25 },
    );
    const radii = run.beads.map(({ radius }) => radius);
    expect(Math.min(...radii)).toBeCloseTo(0.2, 12);
    expect(Math.max(...radii)).toBeGreaterThan(0.39);
    run.beads.forEach(({ centre: [x, y, z], radius }, i) => {
      expect(Math.hypot(x, y)).toBeCloseTo(9 + 0.25 * 2 * radius, 9);
      expect(z).toBe(1);
      const next = run.beads[(i + 1) % run.beads.length];
      const chord = Math.hypot(...next.centre.map((value, k) => value - run.beads[i].centre[k]));
      // A chord of 0.8 mm at 9 mm is short by 3e-4 of itself.
      expect(chord / (radius + next.radius) / run.legs[0].ratio).toBeCloseTo(1, 3);
    });
  });

  it("of one size are the plain run", () => {
    const plain = place(line(square, "loop"));
    expect(place(line(square, "loop"), { to: 0.4 }).at).toEqual(plain.at);
    expect(place(line(square, "loop"), { alternate: 0.4 }).at).toEqual(plain.at);
  });
});

describe("alternating beads", () => {
  const two = { diameter: 0.4, alternate: 0.25 };
  const sizesOf = ({ beads }: PlacedRun) => beads.map(({ radius }) => 2 * radius);

  it("are even in number on loops, of which every second is small, all gaps alike", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 5, noNaN: true }), fc.boolean(), (side, even) => {
        const loop = line(
          square.map(([u, v]): Point2 => [u * side, v * side]),
          "loop",
          even,
        );
        const run = place(loop, two);
        expect(run.beads.length % (even ? 4 : 2)).toBe(0);
        expect(sizesOf(run)).toEqual(run.beads.map((_, i) => (i % 2 === 0 ? 0.4 : 0.25)));
        expect(run.legs[0].ratio).toBeCloseTo((run.spacing as number) / 0.325, 9);
        expect(run.spacing as number).toBeCloseTo((8.4 * side) / run.beads.length, 6);
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  it("begin and end each leg with the first size", () => {
    for (const corners of ["pass", "on", "split"] as const) {
      const run = place(line(zigzag, "open"), { ...two, corners });
      const sizes = sizesOf(run);
      expect(sizes).toEqual([...sizes].reverse());
      expect([sizes[0], sizes[sizes.length - 1]]).toEqual([0.4, 0.4]);
    }
  });
});

describe("one bead fewer, and one more", () => {
  it("stand beside what is made", () => {
    const run = place(
      line(
        [
          [0, 0],
          [4, 0],
        ],
        "open",
      ),
      { pitch: 1.05 },
    );
    expect(run.beads).toHaveLength(11);
    expect(run.fewer).toMatchObject({ count: 10 });
    expect(run.fewer?.legs[0].spacing).toBeCloseTo(4 / 9, 9);
    expect(run.more).toMatchObject({ count: 12 });
    expect(run.more?.legs[0].ratio).toBeCloseTo(4 / 11 / 0.4, 9);
  });

  it("are what a count asks for", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 12, noNaN: true }),
        fc.constantFrom("open", "loop", "strand"),
        (length, kind) => {
          const drawn = line(
            [
              [0, 0],
              [length, 0],
              [length, 1],
            ],
            kind as RunLine["kind"],
          );
          const run = place(drawn);
          for (const choice of [run.fewer, run.more]) {
            if (choice === undefined) continue;
            const asked = place(drawn, { count: choice.count });
            expect(asked.beads).toHaveLength(choice.count);
            expect(asked.legs[0].spacing).toBeCloseTo(choice.legs[0].spacing, 12);
          }
        },
      ),
      { seed: SEED, numRuns: 30 },
    );
  });

  it("are left out where there can be none", () => {
    const short = place(
      line(
        [
          [0, 0],
          [0.3, 0],
        ],
        "open",
      ),
    );
    expect(short.beads).toHaveLength(2);
    expect(short.fewer).toBeUndefined();
    expect(
      place(
        line(
          [
            [0, 0],
            [3, 0],
          ],
          "open",
        ),
        { count: 1 },
      ),
    ).toMatchObject({ fewer: undefined, more: undefined });
  });

  it("keep what is symmetric so", () => {
    const run = place(line(square, "loop", true), { diameter: 0.4, alternate: 0.25 });
    expect([run.fewer?.count, run.more?.count]).toEqual([run.beads.length - 4, run.beads.length + 4]);
    const on = place(line(square, "loop"), { corners: "on" });
    expect([on.fewer?.count, on.beads.length, on.more?.count]).toEqual([16, 20, 24]);
  });
});
