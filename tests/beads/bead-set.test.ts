import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Bead } from "../../src/beads/bead.js";
import { mergeRuns } from "../../src/beads/bead-set.js";
import { SEED } from "../band/profile/specs.js";

const beadAt = (x: number, y = 0, z = 0, radius = 0.2): Bead => ({ centre: [x, y, z], radius, outward: [0, 0, 1] });
const row = (count: number, step: number, y = 0) => Array.from({ length: count }, (_, i) => beadAt(i * step, y));

describe("all beads of a ring", () => {
  it("leaves runs alone that keep apart", () => {
    const runs = [row(10, 0.42), row(10, 0.42, 1)];
    const set = mergeRuns(runs);
    expect(set.beads).toEqual(runs.flat());
    expect(set.merged).toEqual([0, 0]);
    expect(set.crowded).toEqual([]);
  });

  it("makes one bead of two that runs share at their ends, and counts it with the first", () => {
    const down = Array.from({ length: 5 }, (_, i) => beadAt(0, 0.42 * i + 1e-6));
    const { beads, merged, crowded } = mergeRuns([row(5, 0.42), down]);
    expect(beads).toHaveLength(9);
    expect(merged).toEqual([0, 1]);
    expect(crowded).toEqual([]);
  });

  it("puts beads that copies share in their middle, as all of them lie", () => {
    const { beads, merged } = mergeRuns([[beadAt(-0.01, 0.002), beadAt(0.42)], [beadAt(0.01, -0.002)]]);
    expect(merged).toEqual([0, 1]);
    expect(beads).toHaveLength(2);
    for (const [k, value] of beads[0].centre.entries()) expect(value, `${k}`).toBeCloseTo(0, 12);
    const three = [beadAt(0), { ...beadAt(0.03), outward: [0.6, 0, 0.8] } as Bead, beadAt(0.03)];
    const [middle] = mergeRuns(three.map((bead) => [bead])).beads;
    expect(middle.centre[0]).toBeCloseTo(0.02, 12);
    expect(Math.hypot(...middle.outward)).toBeCloseTo(1, 12);
    // A smaller one has no say in it.
    expect(mergeRuns([[beadAt(0)], [beadAt(0.01, 0, 0, 0.15)]]).beads).toEqual([beadAt(0)]);
  });

  it("keeps the larger of two coincident beads, where the first stood", () => {
    const large = beadAt(0.001, 0, 0, 0.3);
    expect(mergeRuns([[beadAt(0)], [large]]).beads).toEqual([large]);
    expect(mergeRuns([[large], [beadAt(0)]]).beads).toEqual([large]);
  });

  it("finds beads of another run that overlap by more than 15 %, not those of their own", () => {
    const near = beadAt(0.3);
    expect(mergeRuns([[beadAt(0)], [near]]).crowded).toEqual([near]);
    expect(mergeRuns([[beadAt(0), near]]).crowded).toEqual([]);
    expect(mergeRuns([[beadAt(0)], [beadAt(0.345)]]).crowded).toEqual([]);
    expect(mergeRuns([[beadAt(0)], [beadAt(0.335)]]).crowded).toHaveLength(1);
  });

  it("has nothing to say of no beads", () => {
    expect(mergeRuns([])).toEqual({ beads: [], merged: [], crowded: [] });
    expect(mergeRuns([[], []])).toEqual({ beads: [], merged: [0, 0], crowded: [] });
  });

  it("agrees with comparing every pair", () => {
    const coordinate = fc.integer({ min: -20, max: 20 }).map((n) => n * 0.137);
    const bead = fc
      .tuple(coordinate, coordinate, fc.constantFrom(-0.3, 0, 0.29), fc.constantFrom(0.1, 0.2, 0.35))
      .map(([x, y, z, radius]) => beadAt(x, y, z, radius));
    const run = fc.array(bead, { maxLength: 40 });
    fc.assert(
      fc.property(fc.array(run, { maxLength: 4 }), (runs) => {
        const { beads, merged, crowded } = mergeRuns(runs);
        const apart = (a: Bead, b: Bead) => Math.hypot(...a.centre.map((value, k) => value - b.centre[k]));
        expect(beads.length + merged.reduce((sum, count) => sum + count, 0)).toBe(runs.flat().length);
        for (const bead of runs.flat()) {
          const shown = beads.some((kept) => apart(kept, bead) <= 0.2 * Math.max(kept.radius, bead.radius));
          expect(shown).toBe(true);
        }
        for (const bead of crowded) expect(runs.flat()).toContain(bead);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });
});
