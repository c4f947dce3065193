import { describe, expect, it } from "vitest";
import type { Point2 } from "../../../src/base/math/point.js";
import { turnOf } from "../../../src/base/math/turn-of.js";
import { exactTurn } from "./exact.js";

const turn = (a: Point2, b: Point2, c: Point2) => turnOf(a[0], a[1], b[0], b[1], c[0], c[1]);
const plain = (a: Point2, b: Point2, c: Point2) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

describe("the turn of three points", () => {
  it("is positive to the left, negative to the right, 0 in line", () => {
    expect(turn([0, 0], [1, 0], [0, 1])).toBe(1);
    expect(turn([0, 0], [0, 1], [1, 0])).toBe(-1);
    expect(Math.abs(turn([0, 0], [1, 1], [3, 3]))).toBe(0);
  });

  it("has the right sign nearly in line, where plain arithmetic often has not", () => {
    let wrong = 0;
    for (let i = -30; i <= 30; i++) {
      for (let j = -30; j <= 30; j++) {
        const [a, b, c]: Point2[] = [
          [0.5 + i * 2 ** -53, 0.5 + j * 2 ** -53],
          [12, 12],
          [24, 24],
        ];
        const exact = exactTurn(a, b, c);
        expect(Math.sign(turn(a, b, c)) + 0).toBe(exact);
        if (Math.sign(plain(a, b, c)) !== exact) wrong++;
      }
    }
    expect(wrong).toBeGreaterThan(500);
  });
});
