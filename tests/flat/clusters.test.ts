import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boxRing } from "../../src/flat/box.js";
import { clustersOf } from "../../src/flat/clusters.js";
import { offset } from "../../src/flat/polygons.js";
import { completeArt } from "../../src/relief/art.js";
import { drawing, region, SEED, stripOf } from "./strips.js";

const box = (left: number, right: number, low: number, high: number) => boxRing({ left, right, low, high });

describe("clusters", () => {
  it("joins what comes within reach, by chains too, and leaves apart what does not", () => {
    const [a, b, c, far] = [box(0, 10, 0, 10), box(12, 20, 0, 10), box(22, 30, 0, 10), box(34, 40, 0, 10)];
    expect(clustersOf([far, a, c, b], 2)).toEqual([[far], [a, c, b]]);
    expect(clustersOf([a, b], 1)).toEqual([[a], [b]]);
  });

  it("keeps a hole with its part however wide the wall, and parts in a hole or beside a slanting side apart", () => {
    const frame = [box(0, 100, 0, 100), box(30, 70, 30, 70).reverse()];
    const inside = box(45, 55, 45, 55);
    expect(clustersOf([...frame, inside], 3)).toEqual([frame, [inside]]);
    const slants = [
      [
        { x: 0, y: 0 },
        { x: 50, y: 50 },
        { x: 0, y: 100 },
      ],
      box(60, 70, 90, 100),
    ];
    expect(clustersOf(slants, 3)).toHaveLength(2);
  });

  it("shrunk and grown one by one they are what all are together", () => {
    const key = (rings: readonly (readonly { x: number; y: number }[])[]) =>
      rings
        .map((ring) =>
          ring
            .map(({ x, y }) => `${x} ${y}`)
            .sort()
            .join(),
        )
        .sort();
    fc.assert(
      fc.property(drawing, fc.constantFrom(-20_000, 20_000), (path, by) => {
        const { region: art } = completeArt(stripOf({ symmetry: "p2" }), region({ path }), "r", () => undefined);
        const alone = clustersOf(art, 8 * 20_000).flatMap((rings) => offset(rings, by, "round", 1000));
        expect(key(alone)).toEqual(key(offset(art, by, "round", 1000)));
      }),
      { seed: SEED, numRuns: 8 },
    );
  });
});
