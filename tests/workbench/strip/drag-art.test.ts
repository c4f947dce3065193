import { describe, expect, it } from "vitest";
import {
  artOnStrip,
  artUnder,
  dragged,
  MOST_HANDLES,
  nearestHandles,
  ownRow,
} from "../../../src/workbench/strip/drag-art.js";
import { layOutStrip } from "../../../src/workbench/strip/strip-layout.js";

const fit = { tileWidth: 4, tileHeight: 3, rows: 2, aspect: 0.6, cycle: 1, bandWidth: 8, referenceRadius: 10 };
const layout = layOutStrip(
  { part: "tile", tiles: 1, seatLength: 6, round: { repeats: 15, medallion: 0 }, fit },
  { cover: 360, laneMiddle: 0.25, nearTop: false },
);
const FREE = { guides: [], reach: 0 };

describe("dragged art", () => {
  it("lies in the lowest row, stretched as its tile is", () => {
    expect(ownRow(layout)).toBe(-1.25);
    expect(artOnStrip(layout, "tile", [0.5, 0.3])).toEqual([2, -1.25 + 1.5]);
    expect(artOnStrip(layout, "mm", [0.5, 0.3])).toEqual([0.5, -0.95]);
  });

  it("comes back to the document's numbers, rounded to what a hand can mean", () => {
    for (const unit of ["tile", "mm"] as const) {
      const { point } = dragged(layout, unit, artOnStrip(layout, unit, [0.1234567, -0.0999999]), FREE);
      expect(point).toEqual(unit === "tile" ? [0.1235, -0.1] : [0.123, -0.1]);
    }
  });

  it("is exact where it snaps, and free where it does not", () => {
    const guides = [{ kind: "mirror", u: 4 / 3 } as const];
    const { point, to } = dragged(layout, "tile", [1.4, -1], { guides, reach: 0.1 });
    expect(point[0]).toBeCloseTo(1 / 3, 9);
    expect(point[1]).toBe(0.05);
    expect(to).toEqual(guides);
    expect(dragged(layout, "tile", [1.4, -1], { guides, reach: 0 }).to).toEqual([]);
  });
});

describe("a place on the strip", () => {
  it("is one of the tile, on whatever copy and row it lies", () => {
    for (const u of [2, -6]) expect(artUnder(layout, [u, 0.15])).toEqual([0.5, 0.28]);
    expect(artUnder(layout, [1, 2.25])).toEqual([0.25, 0.1]);
  });
});

describe("handles", () => {
  it("are shown up to a number, the nearest to where one looks, in their order", () => {
    const many = Array.from({ length: 3 * MOST_HANDLES }, (_, i) => ({ place: [i, 0] as const }));
    const shown = nearestHandles(many, [MOST_HANDLES, 0]);
    expect(shown).toHaveLength(MOST_HANDLES);
    expect(shown[0].place[0]).toBe(MOST_HANDLES / 2);
    expect(shown.every(({ place }, i) => i === 0 || place[0] > shown[i - 1].place[0])).toBe(true);
    expect(nearestHandles(many.slice(0, 5), [0, 0])).toHaveLength(5);
  });
});
