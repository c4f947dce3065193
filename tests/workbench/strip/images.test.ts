// Covers: src/workbench/strip/tiles-field.ts
import { describe, expect, it } from "vitest";
import { friezeGroups } from "../../../src/base/frieze/symmetry.js";
import type { Point2 } from "../../../src/base/math/point.js";
import { flatTile } from "../../../src/index.js";
import { imageMatrix, imageOf, imagesOf } from "../../../src/workbench/strip/images.js";
import { layOutStrip } from "../../../src/workbench/strip/strip-layout.js";
import { toMm, unitScale } from "../../../src/workbench/strip/tile-units.js";
import { carriesOf } from "../../../src/workbench/strip/tiles-field.js";

/** No two sides alike, near one corner, so that no image lies on another. */
const CORNERS: readonly Point2[] = [
  [0.05, 0.06],
  [0.2, 0.09],
  [0.1, 0.21],
];

function design(symmetry: string, pattern: object, region: object = {}) {
  const path = `M ${CORNERS.map((corner) => corner.join(" ")).join(" L ")} Z`;
  return {
    annulet: 1,
    name: "Images",
    size: { system: "iso", value: 54 },
    tolerance: 0.01,
    profile: { width: 6, thickness: 1.8, bore: { form: "flat" }, outside: { form: "domed", rise: 0.2 } },
    pattern: { symmetry, regions: [{ path, height: 0.3, ...region }], ...pattern },
  };
}

/** Corners of all outlines of a flat tile, and of all images, each inside the tiles, in one order. */
async function bothWays(document: object, tiles?: unknown) {
  const tile = await flatTile(document);
  const layout = layOutStrip(tile, { cover: 360, laneMiddle: 0, nearTop: false });
  const scale = unitScale(layout, "tile");
  const corners = CORNERS.map((corner) => toMm(corner, scale));
  const xs = corners.map(([x]) => x);
  const span = [Math.min(...xs), Math.max(...xs)] as const;
  const images = imagesOf(layout, tile.group, span, carriesOf(tiles, tile.fit.cycle));
  const within = ([u]: readonly [number, number]) => u > 1e-6 && u < layout.period - 1e-6;
  const sorted = (points: readonly (readonly [number, number])[]) =>
    points.filter(within).sort(([ax, ay], [bx, by]) => (Math.abs(ax - bx) > 1e-4 ? ax - bx : ay - by));
  return {
    drawn: sorted(tile.regions.flatMap(({ rings }) => rings.flat())),
    own: sorted(images.flatMap((image) => corners.map((corner) => imageOf(image, corner)))),
  };
}

/** The library's grid is finer than a tenth of a micrometre. */
const GRID = 1e-4;

function expectAlike({ drawn, own }: Awaited<ReturnType<typeof bothWays>>, count: number): void {
  expect(own).toHaveLength(count);
  expect(drawn).toHaveLength(count);
  own.forEach(([u, v], i) => {
    expect(Math.hypot(u - drawn[i][0], v - drawn[i][1])).toBeLessThan(GRID);
  });
}

describe("the images of asymmetric art", () => {
  it.each(friezeGroups)("under $name lie where the library completes them", async ({ name, operations }) => {
    expectAlike(await bothWays(design(name, { fit: { repeats: 9, hold: "band" } })), 3 * operations.length);
    expectAlike(await bothWays(design(name, { fit: { repeats: 20, rows: 2, hold: "band" } })), 6 * operations.length);
  });

  it("stand only on the tiles of a cycle that carry them, where an operation acts within a tile", async () => {
    const tiles = { every: 2, from: 1 };
    for (const symmetry of ["p1", "p2mm", "p11g"]) {
      const document = design(symmetry, { fit: { repeats: 12, hold: "band" }, cycle: 4 }, { tiles });
      const count = friezeGroups.find(({ name }) => name === symmetry)?.operations.length ?? 0;
      expectAlike(await bothWays(document, tiles), 2 * 3 * count);
    }
  });

  it("come of the same numbers as SVG's matrix", () => {
    const image = { flipX: true, flipY: false, u: 3, v: -1, own: false };
    const [a, b, c, d, e, f] =
      /matrix\((.*)\)/
        .exec(imageMatrix(image, [2, 4]))?.[1]
        .split(" ")
        .map(Number) ?? [];
    const [x, y] = [0.2, 0.1];
    const [u, v] = imageOf(image, [2 * x, 4 * y]);
    expect([a * x + c * y + e, b * x + d * y + f]).toEqual([u, -v]);
  });

  it("take tiles as the document has them, and nothing that it may not have", () => {
    expect(carriesOf([0, 2], 3)?.(-1)).toBe(true);
    expect(carriesOf([0, 2], 3)?.(4)).toBe(false);
    expect(carriesOf({ every: 2 }, 6)?.(-2)).toBe(true);
    for (const odd of [undefined, null, 3, "all", { every: 0 }, { every: 1.5 }, ["a"]])
      expect(carriesOf(odd, 4)).toBeUndefined();
  });
});
