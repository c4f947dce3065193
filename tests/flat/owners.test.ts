import { describe, expect, it } from "vitest";
import { boxRing } from "../../src/flat/box.js";
import { Owners } from "../../src/flat/owners.js";

const square = (low: number, high: number) => boxRing({ left: low, right: high, low, high });
const hole = (low: number, high: number) => square(low, high).reverse();

describe("whose a ring is", () => {
  const rings = [square(0, 100), hole(10, 90), square(20, 80), hole(30, 40), square(200, 210)];
  const owners = new Owners(rings);

  it("the smallest outer ring about it, itself where it is one", () => {
    expect(owners.outers).toEqual([rings[4], rings[2], rings[0]]);
    expect(rings.map((ring) => owners.ownerOf(ring))).toEqual([2, 2, 1, 1, 0]);
  });

  it("nobody's where none is about it or all are smaller", () => {
    expect(owners.ownerOf(square(150, 160))).toBeUndefined();
    expect(owners.ownerOf(square(50, 500))).toBeUndefined();
  });
});
