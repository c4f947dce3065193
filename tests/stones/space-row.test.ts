/**
 * Rows of discs on circles against the closed formulas.
 */
import { describe, expect, it } from "vitest";
import type { Convex } from "../../src/base/math/convex-distance.js";
import type { Point3 } from "../../src/base/math/point.js";
import { TURN } from "../../src/base/units.js";
import { type RowQuestion, solveRow } from "../../src/stones/space-row.js";

/** A flat disc of a diameter that touches a circle of a radius about z, at an angle. */
function disc(radius: number, diameter: number, angle: number): Convex {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const at: Point3 = [radius * cos, radius * sin, 0];
  return {
    middle: at,
    farthest: ([x, y, z]) => {
      const round = -x * sin + y * cos;
      const length = Math.hypot(round, z) || 1;
      const [a, b] = [((diameter / 2) * round) / length, ((diameter / 2) * z) / length];
      return [at[0] - a * sin, at[1] + a * cos, b];
    },
  };
}

/** Discs all round a circle, or on an arc of so many radians. */
function row(radius: number, diameterAt: (share: number) => number, more: Partial<RowQuestion> = {}): RowQuestion {
  const { length = TURN * radius } = more;
  const girdleAt = (s: number) => disc(radius, diameterAt(s / length), s / radius);
  return { length, closed: true, even: true, pairs: false, girdleAt, gap: 0.1, count: undefined, most: 5000, ...more };
}

/**
 * How many go round at a gap of 0.1 mm, the culet 0.5 mm from the bore, by bore and size (computed with the published
 * formula): bores of US 4, 6, 7, 8 and 10, mm.
 */
const SIZES = [1, 1.3, 1.5, 1.75, 2, 2.5, 3, 3.5, 4];
const ROUND: readonly (readonly [bore: number, counts: readonly number[]])[] = [
  [14.88, [47, 38, 33, 29, 26, 21, 18, 16, 15]],
  [16.51, [52, 41, 37, 32, 28, 23, 20, 18, 16]],
  [17.32, [54, 43, 38, 33, 30, 24, 21, 18, 16]],
  [18.14, [57, 45, 40, 35, 31, 25, 22, 19, 17]],
  [19.76, [61, 49, 43, 37, 33, 27, 23, 20, 18]],
];

describe("a row all round", () => {
  it.each(ROUND)("in a bore of %d mm has as many stones as the formula says", (bore, counts) => {
    const found = SIZES.map((size) => solveRow(row(bore / 2 + 0.5 + 0.431 * size, () => size)).fit?.count);
    expect(found).toEqual(counts);
  });

  it("has the gap of discs that touch a circle, to a millionth of a millimetre", () => {
    // Along the tangents 2 r tan(π/n) − d is left; straight across, the cosine of half the turn between them of that.
    const [radius, diameter] = [9.6, 1.5];
    const { fit, fewer, more } = solveRow(row(radius, () => diameter));
    for (const one of [fit, fewer, more]) {
      const half = Math.PI / (one?.count as number);
      expect(one?.gap).toBeCloseTo((2 * radius * Math.tan(half) - diameter) * Math.cos(half), 8);
    }
    expect((more?.gap as number) < 0.1 && (fit?.gap as number) >= 0.1).toBe(true);
    expect([fewer?.count, more?.count]).toEqual([(fit?.count as number) - 1, (fit?.count as number) + 1]);
  });

  it("settles on the same where no place is taken for like another", () => {
    const even = solveRow(row(9.6, () => 1.5)).fit;
    const found = solveRow(row(9.6, () => 1.5, { even: false })).fit;
    expect(found?.count).toBe(even?.count);
    expect(found?.gap).toBeCloseTo(even?.gap as number, 8);
  });
});

describe("part of a round", () => {
  it("begins and ends with a stone's middle", () => {
    const length = 9.6 * (TURN / 2);
    const { fit } = solveRow(row(9.6, () => 1.5, { length, closed: false }));
    const count = fit?.count as number;
    expect(fit?.places[0]).toBe(0);
    expect(fit?.places[count - 1]).toBeCloseTo(length, 12);
    const half = Math.PI / (2 * (count - 1));
    expect(fit?.gap).toBeCloseTo((2 * 9.6 * Math.tan(half) - 1.5) * Math.cos(half), 8);
  });

  it("that is too short for two has one, in its middle", () => {
    const { fit, fewer } = solveRow(row(9.6, () => 1.5, { length: 1.2, closed: false }));
    expect(fit).toEqual({ count: 1, gap: undefined, places: [0.6] });
    expect(fewer).toBeUndefined();
  });
});

describe("a row that graduates", () => {
  it("has even gaps, and the sizes of the places where its stones come to stand", () => {
    // On a line that is nearly straight, the gap and all diameters add up to its length.
    const radius = 1e6;
    const diameterAt = (share: number) => 2 - 1.2 * Math.abs(2 * share - 1);
    const length = 20;
    const { fit } = solveRow(row(radius, diameterAt, { length, closed: false, even: false }));
    if (fit === undefined) throw new Error("the row fits");
    const diameters = fit.places.map((s) => diameterAt(s / length));
    const taken = diameters.slice(1).reduce((sum, diameter, i) => sum + (diameter + diameters[i]) / 2, 0);
    expect(fit.gap).toBeCloseTo((length - taken) / (fit.count - 1), 6);
    expect(fit.gap).toBeGreaterThanOrEqual(0.1);
    fit.places.forEach((s, i) => {
      expect(s + (fit.places.at(-1 - i) as number)).toBeCloseTo(length, 6);
    });
  });
});

describe("a row with a number of stones", () => {
  it("has that number", () => {
    expect(solveRow(row(9.6, () => 1.5, { count: 30 })).fit?.count).toBe(30);
  });

  it("of which not so many fit says how many do", () => {
    const { fit, room } = solveRow(row(9.6, () => 1.5, { count: 41 }));
    expect(fit).toBeUndefined();
    expect(room).toBe(Math.floor(Math.PI / Math.atan(1.5 / (2 * 9.6))));
  });

  it("where only pairs are as symmetric as the line is even", () => {
    const { fit, fewer, more } = solveRow(row(9.6, () => 1.5, { pairs: true }));
    expect([fewer?.count, fit?.count, more?.count]).toEqual([34, 36, 38]);
  });
});
