import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { GridBox } from "../../src/flat/box.js";
import { BoxTree } from "../../src/flat/box-tree.js";
import { SEED } from "./strips.js";

const box: fc.Arbitrary<GridBox> = fc
  .tuple(fc.nat(50), fc.nat(9), fc.nat(50), fc.nat(9))
  .map(([left, width, low, height]) => ({ left, right: left + width, low, high: low + height }));

describe("a tree of boxes", () => {
  it("finds what a look at each one finds, borders that touch among it", () => {
    fc.assert(
      fc.property(fc.array(box, { maxLength: 200 }), box, (boxes, asked) => {
        const meets = (b: GridBox) =>
          b.left <= asked.right && asked.left <= b.right && b.low <= asked.high && asked.low <= b.high;
        const found = new BoxTree(boxes).meeting(asked).sort((a, b) => a - b);
        expect(found).toEqual(boxes.flatMap((b, i) => (meets(b) ? [i] : [])));
      }),
      { seed: SEED, numRuns: 60 },
    );
  });
});
