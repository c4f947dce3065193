import fc from "fast-check";
import { svgPathProperties } from "svg-path-properties";
import { describe, expect, test } from "vitest";
import { AnnuletError } from "../../../src/base/errors.js";
import { type Cubic, cubicPointAt } from "../../../src/base/math/bezier.js";
import { biarc, fitBiarcs } from "../../../src/base/math/biarc.js";
import {
  pointAt,
  type Segment,
  segmentEnd,
  segmentLength,
  segmentStart,
  tangentAt,
} from "../../../src/base/math/curve.js";
import type { EllipticArc } from "../../../src/base/math/elliptic-arc.js";
import { turnBetween } from "../../../src/base/math/fillet.js";
import type { Point2 } from "../../../src/base/math/point.js";
import { type AxisMap, smoothPiece } from "../../../src/base/math/smooth-piece.js";

const runs = { seed: 20261125, numRuns: 200 };
const AS_DRAWN: AxisMap = { scale: [1, 1], shift: [0, 0] };
const mm = (low: number, high: number) =>
  fc.integer({ min: Math.round(low * 1000), max: Math.round(high * 1000) }).map((n) => n / 1000);
const point: fc.Arbitrary<Point2> = fc.tuple(mm(-4, 4), mm(-2, 2));
const tolerances = fc.constantFrom(0.05, 0.01, 0.001);

/** Any cubic, with loops, turns and inflections. */
const anyCubic = fc
  .tuple(point, point, point, point)
  .filter(([a, b, c, d]) => Math.min(gap(a, b), gap(b, c), gap(c, d)) > 0.01)
  .map((points): Cubic => ({ kind: "cubic", points }));

/** Cubics that join smoothly: at each knot both handles lie on one line, and are too short to meet, so that none has a cusp. */
const chain = fc
  .array(fc.record({ step: mm(0.5, 3), y: mm(-1, 1), angle: mm(-1.2, 1.2), back: mm(0.1, 0.25), on: mm(0.1, 0.25) }), {
    minLength: 3,
    maxLength: 6,
  })
  .map((knots) => {
    let x = 0;
    const placed = knots.map(({ step, y, angle, back, on }) => {
      x += step;
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      return {
        at: [x, y] as Point2,
        into: [x - back * cos, y - back * sin] as Point2,
        out: [x + on * cos, y + on * sin] as Point2,
      };
    });
    return placed
      .slice(1)
      .map(({ into, at }, i): Cubic => ({ kind: "cubic", points: [placed[i].at, placed[i].out, into, at] }));
  });

function gap([ax, ay]: Point2, [bx, by]: Point2): number {
  return Math.hypot(bx - ax, by - ay);
}

/** Distance to a line or arc with its ends. */
function distanceTo(segment: Segment, p: Point2): number {
  const length = segmentLength(segment);
  let s: number;
  if (segment.kind === "line") {
    const [tx, ty] = tangentAt(segment, 0);
    s = (p[0] - segment.from[0]) * tx + (p[1] - segment.from[1]) * ty;
  } else {
    const middle = segment.start + segment.sweep / 2;
    const open = Math.atan2(p[1] - segment.centre[1], p[0] - segment.centre[0]) - middle;
    s = length / 2 + Math.sign(segment.sweep) * segment.radius * Math.atan2(Math.sin(open), Math.cos(open));
  }
  return gap(pointAt(segment, Math.min(length, Math.max(0, s))), p);
}

function distanceToAll(segments: readonly Segment[], p: Point2): number {
  return Math.min(...segments.map((segment) => distanceTo(segment, p)));
}

/** Turns and gaps of a run of segments at its joints. */
function joints(segments: readonly Segment[]): { readonly turn: number; readonly gap: number } {
  const pairs = segments.slice(1).map((next, i) => [segments[i], next] as const);
  return {
    turn: Math.max(0, ...pairs.map(([a, b]) => Math.abs(turnBetween(a, b)))),
    gap: Math.max(0, ...pairs.map(([a, b]) => gap(segmentEnd(a), segmentStart(b)))),
  };
}

describe("a pair of arcs", () => {
  const angle = mm(-0.8, 0.8);

  test("has the ends and tangents asked for, and neither gap nor corner", () => {
    fc.assert(
      fc.property(point, point, angle, angle, (from, to, a, c) => {
        fc.pre(gap(from, to) > 0.01);
        const chord = Math.atan2(to[1] - from[1], to[0] - from[0]);
        const tangents = [a, c].map((turn): Point2 => [Math.cos(chord + turn), Math.sin(chord + turn)]);
        const pair = biarc(from, tangents[0], to, tangents[1]);
        const last = pair[pair.length - 1];
        expect(gap(segmentStart(pair[0]), from)).toBeLessThan(1e-10);
        expect(gap(segmentEnd(last), to)).toBeLessThan(1e-10);
        expect(gap(tangentAt(pair[0], 0), tangents[0])).toBeLessThan(1e-10);
        expect(gap(tangentAt(last, segmentLength(last)), tangents[1])).toBeLessThan(1e-10);
        expect(joints(pair).turn).toBeLessThan(1e-10);
        expect(joints(pair).gap).toBeLessThan(1e-10);
      }),
      runs,
    );
  });

  test("is the one arc where that does it, and a line where nothing turns", () => {
    const [sin, cos] = [Math.SQRT1_2, Math.SQRT1_2];
    const [arc, ...others] = biarc([-sin, cos], [cos, sin], [sin, cos], [cos, -sin]);
    expect(others).toHaveLength(0);
    expect(arc).toMatchObject({ kind: "arc", radius: expect.closeTo(1, 12), sweep: expect.closeTo(-Math.PI / 2, 12) });
    expect(biarc([0, 0], [0.6, 0.8], [3, 4], [0.6, 0.8])).toEqual([{ kind: "line", from: [0, 0], to: [3, 4] }]);
  });
});

test("a smooth chain of cubics becomes a chain of arcs without gap or corner", () => {
  fc.assert(
    fc.property(chain, tolerances, mm(0.4, 2.5), (cubics, tolerance, stretch) => {
      const map: AxisMap = { scale: [stretch, 1], shift: [0.3, 8] };
      const arcs = cubics.flatMap((cubic) => fitBiarcs(smoothPiece(cubic, map), { tolerance }));
      expect(joints(arcs).turn).toBeLessThan(1e-9);
      expect(joints(arcs).gap).toBeLessThan(1e-9);
    }),
    runs,
  );
});

test("no point of any cubic is further from the arcs than the tolerance, nor one of the arcs from the cubic", () => {
  fc.assert(
    fc.property(anyCubic, tolerances, (cubic, tolerance) => {
      const arcs = fitBiarcs(smoothPiece(cubic, AS_DRAWN), { tolerance });
      const sampled = Array.from({ length: 401 }, (_, i) => cubicPointAt(cubic, i / 400));
      for (const p of sampled) expect(distanceToAll(arcs, p)).toBeLessThanOrEqual(tolerance * (1 + 1e-6));
      const chords = sampled.slice(1).map((to, i): Segment => ({ kind: "line", from: sampled[i], to }));
      // Wang's bound for 400 chords of a cubic inside 8 × 4 mm: √(6 · 36 / 8) / 400² mm, rounded up.
      const sagitta = 2e-4;
      for (const arc of arcs) {
        for (let i = 0; i <= 8; i++) {
          const p = pointAt(arc, (segmentLength(arc) * i) / 8);
          expect(distanceToAll(chords.filter(isNotPoint), p)).toBeLessThanOrEqual(tolerance + sagitta);
        }
      }
    }),
    { ...runs, numRuns: 30 },
  );
});

const isNotPoint = (segment: Segment) => segmentLength(segment) > 0;

test("points that svg-path-properties, an independent reader, puts on a path are within the tolerance", () => {
  fc.assert(
    fc.property(chain, tolerances, (cubics, tolerance) => {
      const arcs = cubics.flatMap((cubic) => fitBiarcs(smoothPiece(cubic, AS_DRAWN), { tolerance }));
      const [[first]] = cubics.map(({ points }) => points);
      const curves = cubics.map(({ points }) => `C ${points.slice(1).flat().join(" ")}`).join(" ");
      const other = new svgPathProperties(`M ${first.join(" ")} ${curves}`);
      for (let i = 0; i <= 60; i++) {
        const { x, y } = other.getPointAtLength((other.getTotalLength() * i) / 60);
        expect(distanceToAll(arcs, [x, y])).toBeLessThanOrEqual(tolerance * (1 + 1e-6));
      }
    }),
    { ...runs, numRuns: 60 },
  );
});

describe("an ellipse", () => {
  const whole = (a: number, b: number): EllipticArc => ({
    kind: "ellipse",
    centre: [0, 0],
    radii: [a, b],
    turn: 0.4,
    start: 0,
    sweep: 2 * Math.PI,
  });

  test.each([
    [3, 2],
    [3, 1],
    [2, 1.99],
  ])("with half axes %f and %f has its perimeter and area, and is convex", (a, b) => {
    for (const tolerance of [0.05, 0.01, 0.001, 1e-5]) {
      const arcs = fitBiarcs(smoothPiece(whole(a, b), AS_DRAWN), { tolerance });
      expect(arcs.every((arc) => arc.kind === "arc" && arc.sweep > 0)).toBe(true);
      const perimeter = arcs.reduce((sum, arc) => sum + segmentLength(arc), 0);
      // Ramanujan's second approximation (1914), from memory: for these axes good to 1e-7.
      const h = ((a - b) / (a + b)) ** 2;
      const ramanujan = Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
      // A convex curve within the tolerance of another differs by no more than a parallel curve: 2π tolerance.
      expect(Math.abs(perimeter - ramanujan)).toBeLessThan(2 * Math.PI * tolerance + 1e-6);
      const area = arcs.reduce((sum, arc) => sum + areaUnder(arc), 0);
      expect(Math.abs(area - Math.PI * a * b)).toBeLessThan(ramanujan * tolerance + Math.PI * tolerance ** 2);
    }
  });

  test("that the map makes a circle is one, exactly", () => {
    const arcs = fitBiarcs(smoothPiece({ ...whole(3, 2), turn: 0 }, { scale: [2 / 3, 1], shift: [1, 5] }), {
      tolerance: 0.05,
    });
    for (const arc of arcs) {
      expect(arc).toMatchObject({ kind: "arc", radius: expect.closeTo(2, 12) });
      if (arc.kind === "arc") expect(gap(arc.centre, [1, 5])).toBeLessThan(1e-12);
    }
    expect(joints(arcs).turn).toBeLessThan(1e-12);
  });
});

/** ½ ∮ (x dy − y dx) along one arc. */
function areaUnder(segment: Segment): number {
  if (segment.kind === "line") throw new Error("not an arc");
  const { centre, radius, sweep } = segment;
  const [from, to] = [segmentStart(segment), segmentEnd(segment)];
  return (radius * radius * sweep + centre[0] * (to[1] - from[1]) - centre[1] * (to[0] - from[0])) / 2;
}

test("maps between those it is told of take the same pieces", () => {
  const cubic: Cubic = {
    kind: "cubic",
    points: [
      [-3, 1.2],
      [-1, 2.4],
      [1, 2.4],
      [3, 1.2],
    ],
  };
  const under = (scale: number) => smoothPiece(cubic, { scale: [scale, 1], shift: [0, 0] });
  const counts = Array.from({ length: 101 }, (_, i) => 1 + i / 100).map(
    (scale) => fitBiarcs(under(scale), { tolerance: 0.01, alike: [under(1), under(2)] }).length,
  );
  expect(new Set(counts).size).toBe(1);
});

test("a straight curve is a line however its control points lie", () => {
  const cubic: Cubic = {
    kind: "cubic",
    points: [
      [0, 0],
      [0.3, 0.4],
      [0.6, 0.8],
      [3, 4],
    ],
  };
  const [line, ...others] = fitBiarcs(smoothPiece(cubic, AS_DRAWN), { tolerance: 0.001 });
  expect(line).toEqual({ kind: "line", from: [0, 0], to: [3, 4] });
  expect(others).toHaveLength(0);
});

test("a cusp stays a corner, and so does a turn tighter than the tolerance shows, until it is finer", () => {
  const turnOf = (reach: number, tolerance: number) => {
    const cubic: Cubic = {
      kind: "cubic",
      points: [
        [0, 0],
        [reach, 1],
        [1 - reach, 1],
        [1, 0],
      ],
    };
    const arcs = fitBiarcs(smoothPiece(cubic, AS_DRAWN), { tolerance });
    expect(joints(arcs).gap).toBeLessThan(1e-9);
    return joints(arcs).turn;
  };
  // The derivative at t = ½ is ¾ (d + c − b − a) = ¾ (2 − 2 reach, 0): none for a reach of 1.
  for (const tolerance of [0.05, 0.001, 1e-5]) expect(turnOf(1, tolerance)).toBeGreaterThan(1);
  expect(turnOf(1.001, 0.05)).toBeGreaterThan(0.1);
  expect(turnOf(1.001, 1e-5)).toBeLessThan(1e-9);
  expect(turnOf(1.3, 0.05)).toBeLessThan(1e-9);
});

test("numbers too large for the tolerance are refused, not worked on without end", () => {
  for (const size of [1e12, 1e200]) {
    const cubic: Cubic = {
      kind: "cubic",
      points: [
        [0, 0],
        [0, size],
        [size, size],
        [size, 0],
      ],
    };
    const fit = () => fitBiarcs(smoothPiece(cubic, AS_DRAWN), { tolerance: 1e-6, path: "here" });
    expect(fit).toThrow(AnnuletError);
    expect(fit).toThrow(/10000 arcs/);
  }
});
