import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clearOf, fitLeg, type LegEnd, nearestCount } from "../../src/beads/bead-leg.js";
import { SEED } from "../band/profile/specs.js";

const size = fc.double({ min: 0.2, max: 0.8, noNaN: true });
const end: fc.Arbitrary<LegEnd> = fc.oneof(
  fc.constant("bead" as const),
  fc.double({ min: 0, max: 2.6, noNaN: true }).map(clearOf),
);
const gap = (one: LegEnd) => (one === "bead" ? 0 : one.clear);

describe("beads along a leg", () => {
  it("of one size are evenly apart, from bead to bead or clear of corners", () => {
    const diameterAt = () => 0.4;
    expect(fitLeg(5, { length: 2, ends: ["bead", "bead"], diameterAt, constant: true }).places).toEqual([
      0, 0.5, 1, 1.5, 2,
    ]);
    // A straight "corner" is half a gap away; a right angle √2 times as far, so that the chord over it is one gap.
    const halves = fitLeg(4, { length: 2, ends: [clearOf(0), clearOf(0)], diameterAt, constant: true });
    expect(halves.places).toEqual([0.25, 0.75, 1.25, 1.75]);
    const { places, spacing } = fitLeg(4, {
      length: 2,
      ends: [clearOf(Math.PI / 2), "bead"],
      diameterAt,
      constant: true,
    });
    expect(places[0] * Math.SQRT2).toBeCloseTo(spacing, 12);
    expect(places[3]).toBeCloseTo(2, 12);
  });

  it("that graduate from bead to bead are the geometric sequence", () => {
    fc.assert(
      fc.property(
        size,
        size,
        fc.double({ min: 2, max: 20, noNaN: true }),
        fc.integer({ min: 2, max: 40 }),
        (a, b, length, n) => {
          const diameterAt = (s: number) => a + ((b - a) * s) / length;
          const { places, diameters, ratio } = fitLeg(n + 1, {
            length,
            ends: ["bead", "bead"],
            diameterAt,
            constant: false,
          });
          diameters.forEach((d, i) => {
            expect(d).toBeCloseTo(a * (b / a) ** (i / n), 8);
          });
          // ρ = (2 / k)(q − 1) / (q + 1), k the growth for each mm and q that from bead to bead.
          const q = (b / a) ** (1 / n);
          const k = (b - a) / length;
          if (Math.abs(k) > 1e-6) expect(ratio).toBeCloseTo(((2 / k) * (q - 1)) / (q + 1), 7);
          expect(places[n]).toBeCloseTo(length, 12);
        },
      ),
      { seed: SEED, numRuns: 100 },
    );
  });

  it("of any sizes leave gaps of one share of the local diameters, at the ends too", () => {
    fc.assert(
      fc.property(
        size,
        size,
        end,
        end,
        fc.integer({ min: 2, max: 30 }),
        fc.boolean(),
        (a, b, start, stop, count, alternate) => {
          const length = count * 0.6;
          const diameterAt = (s: number, i: number) =>
            alternate ? (i % 2 === 0 ? a : b) : a + (b - a) * (1 - Math.abs((2 * s) / length - 1));
          const { places, diameters, ratio } = fitLeg(count, {
            length,
            ends: [start, stop],
            diameterAt,
            constant: false,
          });
          places.forEach((s, i) => {
            expect(diameters[i]).toBeCloseTo(diameterAt(s, i), 9);
            if (i > 0) expect(s - places[i - 1]).toBeCloseTo((ratio * (diameters[i] + diameters[i - 1])) / 2, 9);
          });
          expect(places[0]).toBeCloseTo(gap(start) * ratio * diameters[0], 9);
          expect(length - places[count - 1]).toBeCloseTo(gap(stop) * ratio * diameters[count - 1], 9);
        },
      ),
      { seed: SEED, numRuns: 200 },
    );
  });

  it("keep no farther from a spike than two spacings", () => {
    expect(clearOf(Math.PI)).toEqual({ clear: 2 });
    expect(clearOf(0)).toEqual({ clear: 0.5 });
  });
});

describe("how many beads a leg takes", () => {
  const rule = { step: 1, least: 1 };

  it("is max(1, round(L / (pitch · d))) intervals from bead to bead", () => {
    expect(nearestCount(7.4, ["bead", "bead"], rule)).toBe(8);
    expect(nearestCount(7.6, ["bead", "bead"], rule)).toBe(9);
    expect(nearestCount(0.1, ["bead", "bead"], rule)).toBe(2);
  });

  it("is one fewer with half a gap at either end, and at least one", () => {
    expect(nearestCount(7.4, [clearOf(0), clearOf(0)], { step: 1, least: 0 })).toBe(7);
    expect(nearestCount(0.1, [clearOf(0), clearOf(0)], { step: 1, least: 0 })).toBe(1);
  });

  it("changes in the steps that keep it symmetric", () => {
    expect(nearestCount(7.4, ["bead", "bead"], { step: 2, least: 1 })).toBe(9);
    expect(nearestCount(6.9, ["bead", "bead"], { step: 2, least: 1 })).toBe(7);
    expect(nearestCount(9.5, ["bead", "bead"], { step: 4, least: 1 })).toBe(9);
  });
});
