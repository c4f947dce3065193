import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inTurn, inverseOf, movedAcross, movedAlong, movedSpan, STAY } from "../../src/flat/motion.js";
import { motions, SEED } from "./strips.js";

const place = fc.tuple(fc.integer({ min: -900, max: 900 }), fc.integer({ min: -90, max: 90 }));

describe("motions of the flat seat", () => {
  it("taken back, bring every place home, and one after the other are one", () => {
    fc.assert(
      fc.property(motions, motions, place, (first, second, [u, v]) => {
        const back = inverseOf(first);
        expect([movedAlong(movedAlong(u, first), back), movedAcross(movedAcross(v, first), back)]).toEqual([u, v]);
        const both = inTurn(first, second);
        expect(movedAlong(u, both)).toBe(movedAlong(movedAlong(u, first), second));
        expect(movedAcross(v, both)).toBe(movedAcross(movedAcross(v, first), second));
      }),
      { seed: SEED },
    );
  });

  it("move by what they say: 3 along and 2 across, mirrored about half of what they move by", () => {
    expect([movedAlong(5, { ...STAY, u: 3, v: 2 }), movedAcross(5, { ...STAY, u: 3, v: 2 })]).toEqual([8, 7]);
    expect(movedAlong(1.5, { ...STAY, u: 3, mirrored: true })).toBe(1.5);
    expect(movedAcross(1.5, { ...STAY, v: 2, flipped: true })).toBe(0.5);
    expect(movedSpan([1, 4], { ...STAY, u: 10, mirrored: true })).toEqual([6, 9]);
    expect(movedSpan([1, 4], STAY)).toEqual([1, 4]);
  });
});
