// Covers: src/workbench/strip/tile-units.ts
import { describe, expect, it } from "vitest";
import { friezeGroup } from "../../../src/base/frieze/symmetry.js";
import { symmetryElements } from "../../../src/base/frieze/symmetry-elements.js";
import { guidesOf, snap } from "../../../src/workbench/strip/snapping.js";
import { layOutStrip } from "../../../src/workbench/strip/strip-layout.js";
import { toArt, toMm, unitScale } from "../../../src/workbench/strip/tile-units.js";

const fit = {
  tileWidth: 4,
  tileHeight: 3,
  rows: 2,
  aspect: 0.5,
  cycle: 1,
  bandWidth: 8,
  referenceRadius: 10,
};
const layout = layOutStrip(
  { part: "tile", tiles: 1, seatLength: 6, round: { repeats: 15, medallion: 0 }, fit },
  { cover: 360, laneMiddle: 1, nearTop: false },
);
const guides = (name: Parameters<typeof friezeGroup>[0]) => guidesOf(layout, symmetryElements(friezeGroup(name)));

describe("snapping", () => {
  it("knows the elements of the group in every row, the borders and the edges", () => {
    expect(guides("p2mg").filter(({ kind }) => kind === "centre")).toContainEqual({ kind: "centre", u: 1, v: -0.5 });
    expect(guides("p2mg")).toContainEqual({ kind: "centre", u: 3, v: 2.5 });
    expect(guides("p2mg")).toContainEqual({ kind: "mirror", u: 2 });
    expect(guides("p2mg")).toContainEqual({ kind: "glide", v: 2.5 });
    expect(guides("p11m")).toContainEqual({ kind: "middle-mirror", v: -0.5 });
    expect(guides("p1")).toEqual([
      { kind: "border", u: 0 },
      { kind: "border", u: 4 },
      { kind: "border", v: 1 },
      { kind: "edge", v: -2 },
      { kind: "edge", v: 4 },
    ]);
  });

  it("takes a place before a line, the nearest of each kind, and tells which", () => {
    expect(snap([0.9, -0.45], guides("p2mg"), 0.2)).toEqual({
      point: [1, -0.5],
      to: [{ kind: "centre", u: 1, v: -0.5 }],
    });
    const corner = snap([3.95, 3.9], guides("p1"), 0.2);
    expect(corner.point).toEqual([4, 4]);
    expect(corner.to.map(({ kind }) => kind)).toEqual(["border", "edge"]);
    expect(snap([3.95, 3], guides("p1"), 0.2).point).toEqual([4, 3]);
  });

  it("leaves alone what is out of reach, and everything at no reach", () => {
    expect(snap([1.5, 0.5], guides("p1"), 0.2)).toEqual({ point: [1.5, 0.5], to: [] });
    expect(snap([4.0001, 4], guides("p1"), 0).point).toEqual([4.0001, 4]);
  });
});

describe("tile coordinates", () => {
  it("stretch across with the tile, and are millimetres where the document says so", () => {
    expect(unitScale(layout, "tile")).toEqual([4, 6]);
    expect(toMm([0.5, 0.25], unitScale(layout, "tile"))).toEqual([2, 1.5]);
    expect(toArt(toMm([0.3, -0.1], [4, 6]), [4, 6])).toEqual([0.3, expect.closeTo(-0.1, 12)]);
    expect(toMm([0.5, 0.25], unitScale(layout, "mm"))).toEqual([0.5, 0.25]);
  });
});
