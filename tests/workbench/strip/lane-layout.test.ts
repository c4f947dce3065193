import { describe, expect, it } from "vitest";
import { laneAt, laneShift, overStrip } from "../../../src/workbench/strip/lane-layout.js";

const around = 60;
const lane = (period: number, start: number, first: number, count: number) => {
  const copies = Array.from({ length: count }, (_, i) => (first + i) * period);
  return { start, around, period, copies, from: copies[0], to: copies[count - 1] + period };
};

describe("lanes side by side", () => {
  const shown = lane(6, -90, -4, 10);

  it("begin beside each other by the angle between their own tiles, the shorter way", () => {
    expect(laneShift(lane(5, -90, 0, 12), shown)).toBe(0);
    expect(laneShift(lane(5, -84, 0, 12), shown)).toBeCloseTo(1, 12);
    expect(laneShift(lane(5, 264, 0, 12), shown)).toBeCloseTo(-1, 12);
  });

  it("cover the strip that is shown where they go all the way round, with no tile more", () => {
    for (const start of [-90, -84, 100]) {
      const other = lane(5, start, -5, 12);
      const laid = overStrip(other, shown, true);
      const shift = laneShift(other, shown);
      expect(laid.from + shift).toBeLessThanOrEqual(shown.from + 1e-9);
      expect(laid.from + laid.period + shift).toBeGreaterThan(shown.from);
      expect(laid.to + shift).toBeGreaterThanOrEqual(shown.to - 1e-9);
      expect(laid.to - laid.period + shift).toBeLessThan(shown.to);
      expect(laid.copies).toHaveLength(Math.round((laid.to - laid.from) / 5));
    }
    expect(overStrip(lane(6, -90, 0, 10), shown, true)).toMatchObject({ from: -24, to: 36 });
  });

  it("stay as they are where they stop", () => {
    const stopping = lane(5, -60, 0, 4);
    expect(overStrip(stopping, shown, false)).toBe(stopping);
  });

  it("are found by where a place lies across the seat, between them the nearer", () => {
    const lanes = [
      { laneMiddle: -2, seatLength: 1, name: "low" },
      { laneMiddle: 1, seatLength: 3, name: "high" },
    ];
    expect([-9, -2, -1.3, -0.6, 1, 9].map((v) => laneAt(lanes, v)?.name)).toEqual([
      "low",
      "low",
      "low",
      "high",
      "high",
      "high",
    ]);
    expect(laneAt([], 0)).toBeUndefined();
  });
});
