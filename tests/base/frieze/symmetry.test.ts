import { describe, expect, it } from "vitest";
import { friezeGroup, friezeGroups, type TileOperation } from "../../../src/base/frieze/symmetry.js";

/** `second` after `first`, up to whole tiles. */
function compose(first: TileOperation, second: TileOperation): TileOperation {
  const shift = ((second.flipX ? -first.shift : first.shift) + second.shift + 2) % 1;
  return { flipX: first.flipX !== second.flipX, flipY: first.flipY !== second.flipY, shift: shift as 0 | 0.5 };
}

describe("the frieze groups", () => {
  // International Tables for Crystallography, vol. E: seven groups, of point groups of order 1, 2 or 4.
  it("are seven, of the known orders", () => {
    expect(Object.fromEntries(friezeGroups.map(({ name, operations }) => [name, operations.length]))).toEqual({
      p1: 1,
      p11g: 2,
      p1m1: 2,
      p2: 2,
      p11m: 2,
      p2mg: 4,
      p2mm: 4,
    });
  });

  it.each(friezeGroups.map((group) => [group.name, group] as const))(
    "%s is closed and begins with the identity",
    (_, group) => {
      const operations: readonly TileOperation[] = group.operations;
      expect(operations[0]).toEqual({ flipX: false, flipY: false, shift: 0 });
      for (const a of operations) {
        for (const b of operations) expect(operations).toContainEqual(compose(a, b));
        expect(operations.some((b) => JSON.stringify(compose(a, b)) === JSON.stringify(operations[0]))).toBe(true);
      }
    },
  );

  it("have the elements that their names say", () => {
    const has = (name: (typeof friezeGroups)[number]["name"], operation: TileOperation) =>
      expect(friezeGroup(name).operations).toContainEqual(operation);
    has("p1m1", { flipX: true, flipY: false, shift: 0 });
    has("p11m", { flipX: false, flipY: true, shift: 0 });
    has("p11g", { flipX: false, flipY: true, shift: 0.5 });
    has("p2", { flipX: true, flipY: true, shift: 0 });
    // Half turns at x = ¼: x′ = ½ − x.
    has("p2mg", { flipX: true, flipY: true, shift: 0.5 });
  });
});
