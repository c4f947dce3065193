/**
 * Stones beside each other: distances and depths against manifold-3d's smallest gap between the faceted solids, and warnings.
 */
import Module from "manifold-3d";
import { beforeAll, describe, expect, it } from "vitest";
import { convexDistance } from "../../src/base/math/convex-distance.js";
import { stoneMesh } from "../../src/gems/stone-mesh.js";
import { nearPairs } from "../../src/stones/check-apart.js";
import { intoSpace } from "../../src/stones/frame.js";
import type { PlacedStone } from "../../src/stones/placed-stone.js";
import { StoneShapes, wholeBody } from "../../src/stones/stone-shape.js";
import { placeOn } from "../support/place-stones.js";

type Library = Awaited<ReturnType<typeof Module>>;
let library: Library;
beforeAll(async () => {
  library = await Module();
  library.setup();
});

/** Finest girdle that solids are made with, mm. */
const FINE = 0.0005;

/** The faceted stone in its place, as the other library has it. */
function solidOf(placed: PlacedStone): InstanceType<Library["Manifold"]> {
  const { positions, triangles } = stoneMesh(placed.stone, { tolerance: FINE });
  const points = Array.from({ length: positions.length / 3 }, (_, i) =>
    intoSpace(placed, [positions[3 * i], positions[3 * i + 1], positions[3 * i + 2]]),
  );
  const mesh = new library.Mesh({
    numProp: 3,
    vertProperties: Float32Array.from(points.flat()),
    triVerts: Uint32Array.from(triangles),
  });
  return new library.Manifold(mesh);
}

const flush = { form: "flush" };

describe("stones beside each other", () => {
  const cuts = ["round", "oval", "marquise", "pear", "princess", "emerald", "tapered-baguette", "cabochon"] as const;
  it.each(cuts)("of cut %s lie as far apart as their solids do", async (cut) => {
    const group = { cut, size: 2, setting: flush, level: 0.6 };
    const { stones } = await placeOn([
      { ...group, place: { form: "single", angle: 90, turn: 20 } },
      { ...group, place: { form: "single", angle: 104, v: 0.9, turn: -35 } },
    ]);
    const shapes = new StoneShapes();
    const [a, b] = stones.map((stone) => wholeBody(shapes.of(stone.stone), stone));
    // Single precision, and chords of 5 µm against those of half a micrometre.
    expect(Math.abs(convexDistance(a, b).distance - solidOf(stones[0]).minGap(solidOf(stones[1]), 5))).toBeLessThan(
      0.006,
    );
  });

  it("are told with how near they are and where that least is from", async () => {
    const { warnings } = await placeOn([{ size: 1.5, place: { form: "row", gap: 0.02 }, setting: flush }]);
    const near = warnings.filter(({ code }) => code === "stones-close");
    expect(near).toHaveLength(1);
    expect(near[0].message).toMatch(
      /^stone 1 of "stones 1" at 90° and stone 2 .* only 0\.0\d+ mm apart, the nearest of 4\d pairs$/,
    );
    expect(near[0].allowed).toMatch(/at least 0.1 mm .*gia\.edu/);
    const { warnings: none } = await placeOn([{ size: 1.5, place: { form: "row" }, setting: flush }]);
    expect(none).toEqual([]);
  });

  it("in each other are named, the deepest of two groups once", async () => {
    const row = { size: 1.5, place: { form: "row", count: 20 }, setting: flush, name: "row" };
    const other = { size: 1, place: { form: "single", angle: 90, v: 0.6 }, setting: flush, name: "aside" };
    await expect(placeOn([row, other])).rejects.toMatchObject({
      problems: [
        {
          code: "stones-overlap",
          path: "stones[1].place",
          message: expect.stringMatching(
            /^stone 1 of "row" at 90° and stone 21 of "aside" at 90° stand 0\.\d+ mm in each other$/,
          ),
        },
      ],
    });
  });

  it("below their girdles too: deep pavilions on a narrow ring meet though their girdles do not", async () => {
    const proportions = { pavilionDepth: 1.2, table: 0.9 };
    const group = { cut: "princess", size: 2, proportions, setting: flush, level: 0 };
    const size = { diameter: 17.3 };
    const place = (angle: number) => ({ form: "single", angle });
    const thick = { size, profile: { width: 5, thickness: 6, outside: { form: "flat" } } };
    const { stones } = await placeOn([{ ...group, place: place(90) }], thick);
    const [one] = stones;
    const shapes = new StoneShapes();
    // Turned so far towards the first that their culets cross, and moved aside so that their girdles do not touch.
    const tilt = 0.9;
    const moved: PlacedStone = {
      ...one,
      number: 2,
      at: [one.at[0] + 2.1 * Math.cos(tilt / 2), one.at[1] - 2.1 * Math.sin(tilt / 2), one.at[2]],
      out: [Math.sin(tilt), Math.cos(tilt), 0],
      along: [-Math.cos(tilt), Math.sin(tilt), 0],
    };
    const [pair] = nearPairs([one, moved], shapes);
    expect(pair.gap).toBeGreaterThan(0);
    expect(pair.depth).toBeGreaterThan(0);
    expect(solidOf(one).intersect(solidOf(moved)).volume()).toBeGreaterThan(0);
  });

  it("are found however many there are: every near pair of a field, and no other", async () => {
    const pattern = { symmetry: "p1", fit: { repeats: 40, rows: 6, hold: "band" } };
    const group = { size: 0.7, place: { form: "tile", at: [0.5, 0] }, setting: flush };
    const { stones } = await placeOn([group], { pattern });
    const shapes = new StoneShapes();
    const found = nearPairs(stones, shapes).length;
    const gap = (a: PlacedStone, b: PlacedStone) => Math.hypot(...a.at.map((value, k) => value - b.at[k])) - 0.7;
    const near = stones.flatMap((a, i) => stones.slice(i + 1).filter((b) => gap(a, b) < 0.1)).length;
    expect(stones).toHaveLength(240);
    expect(found).toBe(near);
    expect(found).toBeGreaterThan(0);
  });
});
