import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point3 } from "../../src/base/math/point.js";
import type { Bead } from "../../src/beads/bead.js";
import { BeadIndex, SIZE_SHARE } from "../../src/beads/bead-index.js";
import { SEED } from "../band/profile/specs.js";

const SAME = 0.01;
const place = fc.tuple(
  ...([0, 1, 2].map(() => fc.double({ min: -12, max: 12, noNaN: true })) as [
    fc.Arbitrary<number>,
    fc.Arbitrary<number>,
    fc.Arbitrary<number>,
  ]),
);
const bead = (centre: Point3, radius = 0.2): Bead => ({ centre, radius, outward: [1, 0, 0] });
const MIRROR = { a: -1, b: 0, c: 0, d: 1, e: 1 };
const flip = ([x, y, z]: Point3): Point3 => [-x, y, z];

describe("beads by their place", () => {
  it("find each bead's image, as comparing all with all does", () => {
    fc.assert(
      fc.property(fc.array(place, { maxLength: 30 }), place, (places, shift) => {
        const near = places.map(([x, y, z]): Point3 => [-x + (SAME / 40) * shift[0], y, z + (SAME / 40) * shift[2]]);
        const beads = [...places, ...near].map((centre) => bead(centre));
        const apart = (a: Point3, b: Point3) => Math.sqrt(a.reduce((sum, value, k) => sum + (value - b[k]) ** 2, 0));
        const expected = beads.map(({ centre }) => {
          const gaps = beads.map((other) => apart(flip(centre), other.centre));
          return Math.min(...gaps) <= SAME ? Math.min(...gaps) : undefined;
        });
        const found = new BeadIndex(beads, SAME).images(MIRROR);
        if (expected.includes(undefined)) expect(found).toBeUndefined();
        else
          expect(found && Array.from(found, (i, own) => apart(flip(beads[own].centre), beads[i].centre))).toEqual(
            expected,
          );
      }),
      { seed: SEED },
    );
  });

  it("have none where it is farther, or of another size", () => {
    const images = (centre: Point3, radius?: number) =>
      new BeadIndex([bead([3, 1, 2]), bead(centre, radius)], SAME).images(MIRROR);
    expect(images([-3, 1, 2])).toEqual(Int32Array.of(1, 0));
    expect(images([-3, 1 + 0.9 * SAME, 2], 0.2 + 0.9 * SIZE_SHARE * SAME)).toEqual(Int32Array.of(1, 0));
    expect(images([-3, 1 + 1.1 * SAME, 2])).toBeUndefined();
    expect(images([-3, 1, 2], 0.2 + 1.1 * SIZE_SHARE * SAME)).toBeUndefined();
  });
});
