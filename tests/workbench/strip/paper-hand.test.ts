import { describe, expect, it } from "vitest";
import { toFlat } from "../../../src/workbench/strip/flat-view.js";
import { PaperHand, viewKey, wheelFactor } from "../../../src/workbench/strip/paper-hand.js";

const VIEW = { scale: 20, u: 0, v: 0, hold: "band" } as const;
const SIZE = [400, 200] as const;

describe("the hand on the paper", () => {
  it("presses where it does not move, and moves the paper where it does", () => {
    const hand = new PaperHand();
    hand.down(1, [100, 100]);
    expect(hand.move(1, [102, 101], VIEW, SIZE)).toBe(VIEW);
    expect(hand.up(1)).toEqual([100, 100]);
    hand.down(1, [100, 100]);
    const moved = hand.move(1, [140, 100], VIEW, SIZE);
    expect(moved.u).toBeCloseTo(-2, 9);
    expect(hand.up(1)).toBeUndefined();
    expect(hand.holds).toBe(false);
  });

  it("draws the paper apart with two pointers, which stay where they took hold of it", () => {
    const hand = new PaperHand();
    hand.down(1, [100, 100]);
    hand.down(2, [200, 100]);
    const held = [toFlat(VIEW, SIZE, [100, 100]), toFlat(VIEW, SIZE, [200, 100])];
    const nearer = hand.move(2, [300, 100], hand.move(1, [50, 100], VIEW, SIZE), SIZE);
    expect(nearer.scale).toBeCloseTo(20 * 2.5, 9);
    // Both pointers moved: the middle of what they hold lies in their middle.
    const middle = toFlat(nearer, SIZE, [175, 100]);
    expect(Math.abs(middle[0] - (held[0][0] + held[1][0]) / 2)).toBeLessThan(1.5);
    hand.up(1);
    expect(hand.up(2)).toBeUndefined();
  });

  it("forgets a pointer that was taken away", () => {
    const hand = new PaperHand();
    hand.down(1, [0, 0]);
    hand.lose(1);
    expect(hand.move(1, [90, 0], VIEW, SIZE)).toBe(VIEW);
    expect(hand.up(1)).toBeUndefined();
  });
});

describe("wheel and keys", () => {
  it("come nearer and go away alike, whatever the wheel counts in", () => {
    const [nearer, farther] = [-100, 100].map((deltaY) => wheelFactor({ deltaY, deltaMode: 0 }));
    expect(nearer).toBeGreaterThan(1);
    expect(nearer * farther).toBeCloseTo(1, 12);
    expect(wheelFactor({ deltaY: 3, deltaMode: 1 })).toBeCloseTo(wheelFactor({ deltaY: 48, deltaMode: 0 }), 12);
    expect(wheelFactor({ deltaY: 1e9, deltaMode: 2 })).toBeGreaterThan(0.5);
  });

  it("move the paper, or bring it nearer", () => {
    expect(viewKey("ArrowLeft")?.by?.[0]).toBeGreaterThan(0);
    expect((viewKey("+")?.factor ?? 0) * (viewKey("-")?.factor ?? 0)).toBeCloseTo(1, 12);
    expect(viewKey("toString")).toBeUndefined();
  });
});
