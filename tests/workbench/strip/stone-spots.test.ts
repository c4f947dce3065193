import { describe, expect, it } from "vitest";
import {
  endWithStones,
  MOST_SPOTS,
  stoneAt,
  stoneSpots,
  undrawnStones,
} from "../../../src/workbench/strip/stone-spots.js";

/** 60 mm round, the own tile's left border at the back, three tiles before it. */
const layout = { start: 270, around: 60, from: -30, to: 30 };

/** 3 × 1 mm. */
const bodies = [
  {
    outline: [
      [-1.5, -0.5],
      [1.5, -0.5],
      [1.5, 0.5],
      [-1.5, 0.5],
    ] as const,
  },
];

const stone = (number: number, angle: number, turn = 0, v = 0) =>
  ({ body: 0, group: 0, number, flat: { surface: "seat", angle, v, turn } }) as never;

describe("stones on the strip", () => {
  it("lie at their angle, and at both ends where they go over one", () => {
    const spots = stoneSpots(layout, { bodies, stones: [stone(1, 300), stone(2, 90), stone(3, 84), stone(4, 60)] });
    expect(spots.map(({ stone: { number }, u }) => [number, Number(u.toFixed(9))])).toEqual([
      [1, 5],
      [2, -30],
      [2, 30],
      [3, 29],
      [3, -31],
      [4, 25],
    ]);
  });

  it("are met within their girdle, turned as they are, and not beside it", () => {
    const stones = [stone(1, 270), stone(2, 330, 90, 1)];
    const spots = stoneSpots(layout, { bodies, stones });
    expect(stoneAt(spots, { bodies }, [1.4, 0.4])?.number).toBe(1);
    expect(stoneAt(spots, { bodies }, [0.4, 1.4])).toBeUndefined();
    expect(stoneAt(spots, { bodies }, [10.4, 2.4])?.number).toBe(2);
    expect(stoneAt(spots, { bodies }, [11.4, 1.4])).toBeUndefined();
    // Counter-clockwise from outside: its far end lies up at the right.
    const leaning = stoneSpots(layout, { bodies, stones: [stone(3, 270, 45)] });
    expect(stoneAt(leaning, { bodies }, [0.9, 0.9])?.number).toBe(3);
    expect(stoneAt(leaning, { bodies }, [0.9, -0.9])).toBeUndefined();
  });

  it("reach beyond the end of a strip that does not go all round", () => {
    const part = { ...layout, from: 0, to: 30 };
    expect(endWithStones(part, stoneSpots(part, { bodies, stones: [stone(1, 300)] }))).toBe(30);
    expect(endWithStones(part, stoneSpots(part, { bodies, stones: [stone(1, 120)] }))).toBeCloseTo(
      36 + Math.hypot(1.5, 0.5),
      9,
    );
  });

  it("are no more than can be told apart, and how many are left out is known", () => {
    const stones = Array.from({ length: MOST_SPOTS + 9 }, (_, i) => stone(i + 1, 300));
    expect(stoneSpots(layout, { bodies, stones })).toHaveLength(MOST_SPOTS);
    expect(undrawnStones({ stones })).toBe(9);
    expect(undrawnStones({ stones: stones.slice(0, MOST_SPOTS) })).toBe(0);
  });
});
