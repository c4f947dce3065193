// Covers: src/base/clock.ts
import { describe, expect, it, vi } from "vitest";
import { checkTime, whileTimed } from "../../src/base/clock.js";
import { LIMITS } from "../../src/base/limits.js";
import type { Pausing } from "../../src/base/pausing.js";
import { Work } from "../../src/base/work.js";
import { limitCrossings } from "../../src/flat/crossing-limit.js";
import type { GridPath } from "../../src/flat/grid.js";
import { offset, unite } from "../../src/flat/polygons.js";

/** A ring of chords between places of a circle: two chords cross in one of three cases, so n of them about n²/6 times. */
function star(chords: number): GridPath {
  let state = 1;
  return Array.from({ length: chords }, () => {
    // Lehmer's generator (Park and Miller, 1988).
    state = (state * 48271) % 2147483647;
    const angle = (2 * Math.PI * state) / 2147483647;
    return { x: Math.round(1e5 * Math.cos(angle)), y: Math.round(1e5 * Math.sin(angle)) };
  });
}

/** Works at a place of the document. */
function* at(place: string, run: () => unknown): Pausing<void> {
  yield place;
  run();
}

const problemOf = (work: Work, pausing: Pausing<void>) => work.through(pausing).catch((reason: unknown) => reason);

describe("crossings of one operation", () => {
  it("are no matter up to a bound; beyond it what is worked is refused, also where the library sweeps for itself", async () => {
    expect(unite([star(300)]).length).toBeGreaterThan(0);
    const tangled = at("pattern.regions[2]", () => offset([star(1850)], 500, "miter", 10));
    expect(await problemOf(new Work(), tangled)).toMatchObject({ code: "art-too-tangled", path: "pattern.regions[2]" });
    // Counted anew for each.
    expect(limitCrossings(() => 3)).toBe(3);
    expect(unite([star(300)]).length).toBeGreaterThan(0);
  });
});

describe("the time of work that cannot give way", () => {
  it("is looked at inside one operation", () => {
    let looks = 0;
    const late = () => {
      if (++looks > 2) throw new RangeError("late");
    };
    expect(() => whileTimed(late, () => unite([star(500)]))).toThrow("late");
    looks = 0;
    expect(() => checkTime()).not.toThrow();
    expect(() => unite([star(300)])).not.toThrow();
    expect(looks).toBe(0);
  });

  it("is looked at where nothing crosses too, and the share grows there", async () => {
    // Many heights without a crossing, in one operation.
    const round = Array.from({ length: 6000 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 6000;
      return { x: Math.round(1e7 * Math.cos(angle)), y: Math.round(1e7 * Math.sin(angle)) };
    });
    // A clock that goes on by a second whenever it is looked at.
    let now = 0;
    const clock = vi.spyOn(performance, "now").mockImplementation(() => (now += 1000));
    const shares: number[] = [];
    let before = 0;
    let within = 0;
    const work = new Work({ ...LIMITS, seconds: 1e6 }, undefined, (share) => shares.push(share));
    await work.through(
      at("pattern.regions[0]", () => {
        before = shares.length;
        unite([round]);
        within = shares.length - before;
      }),
    );
    clock.mockRestore();
    expect(within).toBeGreaterThan(5);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(new Set(shares).size).toBe(shares.length);
    expect(Math.max(...shares)).toBeLessThan(1);
  });

  it("is that of the work which goes on, with the place that is worked", async () => {
    const late = new Work({ ...LIMITS, seconds: 1e-6 });
    const slow = at("pattern.regions[1]", () => unite([star(3)]));
    expect(await problemOf(late, slow)).toMatchObject({ code: "too-long", path: "pattern.regions[1]" });
  });
});
