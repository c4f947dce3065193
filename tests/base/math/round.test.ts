import { describe, expect, it } from "vitest";
import { isHalfTurn, isWholeRound } from "../../../src/base/math/round.js";

const TURN = 2 * Math.PI;

describe("a sector", () => {
  it.each([
    [TURN / 3, false, false],
    [TURN / 2 - 1e-6, false, false],
    [TURN / 2, true, false],
    [0.1 + TURN / 2 - 0.1, true, false],
    [TURN - 1e-6, true, false],
    [TURN, true, true],
  ])("of %f radians is half a turn: %s, the whole round: %s", (wide, half, whole) => {
    for (const from of [0, 1.3, -4]) {
      expect(isHalfTurn({ from, to: from + wide })).toBe(half);
      expect(isWholeRound({ from, to: from + wide })).toBe(whole);
    }
  });
});
