import { describe, expect, it } from "vitest";
import { reachUnder, requireOnSeat } from "../../src/beads/seat-edge.js";
import type { GridPath } from "../../src/flat/grid.js";
import { steps } from "../../src/flat/strip.js";
import { failureOf, stripOf } from "../flat/strips.js";

const strip = stripOf();
const mm = (...points: [number, number][]): GridPath =>
  points.map(([x, y]) => ({ x: Math.round(steps(strip, x)), y: Math.round(steps(strip, y)) }));

describe("relief at the seat's edge", () => {
  // The seat reaches from −3 to 3 mm.
  it("goes on straight beneath the rail on both sides", () => {
    const bar = mm([1, -3], [2, -3], [3, 3], [2, 3]);
    expect(reachUnder(strip, [bar], 0.12)).toEqual([mm([0.98, -3.12], [1.98, -3.12], [3.02, 3.12], [2.02, 3.12])]);
    expect(reachUnder(strip, [bar], 0)).toEqual([bar]);
  });

  it("goes on beneath a rail where there is one, and ends at the other edge", () => {
    const bar = mm([1, -3], [2, -3], [2, 3], [1, 3]);
    const low = [mm([1, -3.12], [2, -3.12], [2, 3], [1, 3])];
    const high = [mm([1, -3], [2, -3], [2, 3.12], [1, 3.12])];
    expect(reachUnder(strip, [bar], 0.12, [true, false])).toEqual(low);
    expect(reachUnder(strip, [bar], 0.12, [false, true])).toEqual(high);
    expect(reachUnder(strip, [bar], 0.12, [false, false])).toEqual([bar]);
  });

  it("never crosses its own sides, and leans no further than twice its depth", () => {
    const [narrow] = reachUnder(strip, [mm([0, 0], [4, 0], [2.01, 3], [1.99, 3])], 0.1);
    expect(narrow[2].x).toBeGreaterThan(narrow[3].x);
    const [flat] = reachUnder(strip, [mm([0, 2.9], [2, 2.9], [4, 3], [3, 3])], 0.1);
    expect(flat[2].x / strip.grid.scale).toBeCloseTo(4.2, 5);
  });

  it("takes tips and the middle of an edge straight across", () => {
    const [tip] = reachUnder(strip, [mm([0, 0], [2, 0], [1, 3])], 0.1);
    expect(tip[2]).toEqual(mm([1, 3.1])[0]);
    const [wide] = reachUnder(strip, [mm([0, 0], [4, 0], [4, 3], [2, 3], [0, 3])], 0.1);
    expect(wide[3]).toEqual(mm([2, 3.1])[0]);
  });

  it("must lie on the seat, but for rounding", () => {
    requireOnSeat(strip, [mm([0, 0], [2, 0], [1, 3.001])], "pattern.regions[0]");
    const error = failureOf(() => requireOnSeat(strip, [mm([0, 0], [2, 0], [1, -3.2])], "pattern.regions[0]"));
    expect([error.code, error.path, error.value]).toEqual(["region-outside-seat", "pattern.regions[0]", 3.2]);
    expect(error.message).toMatch(/0\.2 mm beyond/);
  });
});
