import { describe, expect, it } from "vitest";
import { makeLine } from "../../../src/band/surface/line.js";
import { footAt, placeAt, stepsAlong } from "../../../src/judge/proof/walk-column.js";

describe("a walk along a column", () => {
  it("looks at each place once, and hands on both ends of each step up to the very end", () => {
    const seen: number[] = [];
    const find = (t: number) => {
      seen.push(t);
      return { t };
    };
    const steps = [...stepsAlong([-0.3, 0.5], 4, find)].map(([a, b]) => [a.t, b.t]);
    expect(seen).toHaveLength(5);
    expect(steps.map(([a]) => a)).toEqual(seen.slice(0, -1));
    expect(steps.map(([, b]) => b)).toEqual(seen.slice(1));
    expect([seen[0], seen[4]]).toEqual([-0.3, 0.5]);
    expect([...stepsAlong([0, 1], 0, find)]).toEqual([]);
  });

  it("goes along the column's way", () => {
    expect(placeAt({ point: [1, 9], way: [0.6, 0.8] }, 0.5)).toEqual([1.3, 9.4]);
  });

  it("has its feet on the seat's line, and beyond its ends where that goes on straight", () => {
    const line = makeLine([{ kind: "line", from: [-2, 10], to: [2, 10] }] as Parameters<typeof makeLine>[0]);
    for (const w of [-2, -0.7, 0, 1.9]) expect(footAt(line, w)).toBeCloseTo(w, 3);
    expect(footAt(line, 2.4)).toBeCloseTo(2.4, 9);
    expect(footAt(line, -3)).toBeCloseTo(-3, 9);
  });
});
