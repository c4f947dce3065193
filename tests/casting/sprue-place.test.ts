import { describe, expect, it } from "vitest";
import type { Point2 } from "../../src/base/math/point.js";
import { sprueSeat } from "../../src/casting/sprue-place.js";
import { failureOf } from "../support/failure-of.js";

const [BORE, OUTSIDE] = [8.4, 10];
const flat: readonly Point2[] = [
  [-3, BORE],
  [3, BORE],
  [3, OUTSIDE],
  [-3, OUTSIDE],
];

describe("where a sprue stands", () => {
  it("its foot ends half way between the bore and the lowest outside under its rim", () => {
    const { root, foot } = sprueSeat(flat, 0.5, 1.5);
    expect(root).toBe(OUTSIDE);
    expect(foot).toBeCloseTo((BORE + Math.sqrt(OUTSIDE ** 2 - 1.5 ** 2)) / 2, 9);
  });

  it("in a channel it stands on the rails where it covers them, and reaches into the floor", () => {
    const channel: readonly Point2[] = [
      [-3, BORE],
      [3, BORE],
      [3, OUTSIDE],
      [2, OUTSIDE],
      [2, 9.4],
      [-2, 9.4],
      [-2, OUTSIDE],
      [-3, OUTSIDE],
    ];
    expect(sprueSeat(channel, 0, 1.5).root).toBe(9.4);
    const over = sprueSeat(channel, 0, 2.5);
    expect(over.root).toBe(OUTSIDE);
    expect(over.foot).toBeLessThan((BORE + 9.4) / 2);
  });

  it("says how wide it may be where the band ends beneath it", () => {
    const { problems } = failureOf(() => sprueSeat(flat, 1, 2.4));
    expect(problems).toMatchObject([{ code: "sprue-too-wide", path: "sprue.diameter", value: 4.8 }]);
    const most = Number(/up to ([\d.]+) mm/.exec(String(problems[0].allowed))?.[1]);
    expect(most).toBeGreaterThan(3.99);
    expect(most).toBeLessThanOrEqual(4);
    expect(sprueSeat(flat, 1, most / 2).root).toBe(OUTSIDE);
  });

  it("says where there is no band at all", () => {
    expect(failureOf(() => sprueSeat(flat, 4, 0.5)).problems).toMatchObject([{ path: "sprue.across", value: 4 }]);
  });
});
