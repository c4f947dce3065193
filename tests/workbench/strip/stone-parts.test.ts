import { describe, expect, it } from "vitest";
import { artParts } from "../../../src/workbench/strip/art-parts.js";
import { angleNear } from "../../../src/workbench/strip/stone-parts.js";

const parts = (place: object) => artParts({ stones: [{ size: 1, place }] }, ["stones", 0]);
const at = (...keys: string[]) => ["stones", 0, "place", ...keys];

describe("what of a group of stones can be taken hold of", () => {
  it("is its place in the tile, or its line", () => {
    expect(parts({ form: "tile", at: [0.5, 0.1], unit: "mm" })).toEqual([
      { kind: "point", at: at("at"), unit: "mm", point: [0.5, 0.1] },
    ]);
    expect(parts({ form: "line", path: "M0 0H1" })).toEqual([
      { kind: "path", at: at("path"), unit: "tile", d: "M0 0H1" },
    ]);
  });

  it("is a single stone's angle and height, also where the document leaves both", () => {
    const spot = { kind: "spot", at: at("angle"), vAt: at("v") };
    expect(parts({ form: "single" })).toEqual([{ ...spot, angle: 90, v: 0 }]);
    expect(parts({ form: "single", angle: -20, v: 1 })).toEqual([{ ...spot, angle: -20, v: 1 }]);
  });

  it("is a row's height, where it has one, and the ends of an open row", () => {
    expect(parts({ form: "row" })).toEqual([{ kind: "row", at: at("along"), v: 0 }]);
    expect(parts({ form: "row", along: "rail" })).toEqual([]);
    const over = { from: 10, to: 80 };
    expect(
      parts({ form: "row", along: { v: 1.5 }, over }).map((part) => [
        part.kind,
        part.at.join("."),
        "v" in part && part.v,
      ]),
    ).toEqual([
      ["row", "stones.0.place.along", 1.5],
      ["spot", "stones.0.place.over.from", 1.5],
      ["spot", "stones.0.place.over.to", 1.5],
    ]);
    expect(parts({ form: "row", along: "rail", over }).map(({ kind }) => kind)).toEqual(["spot", "spot"]);
  });

  it("is nothing of what the document has wrong", () => {
    for (const place of [{ form: "tile" }, { form: "swirl" }, { form: "row", along: { v: "x" } }]) {
      expect(parts(place).filter((part) => part.kind !== "point" || part.point !== undefined)).toEqual([]);
    }
    expect(artParts({ stones: [{ place: 3 }] }, ["stones", 0])).toEqual([]);
  });
});

describe("an angle that is dragged to", () => {
  const layout = { start: 270, around: 72 };
  it("is the turn of it that lies nearest to what stood there, within what the document takes", () => {
    expect(angleNear(layout, 36, 80, true)).toBe(90);
    expect(angleNear(layout, 36, -250, true)).toBe(-270);
    expect(angleNear(layout, 18, 350, true)).toBe(360);
    expect(angleNear(layout, 20, 359, true)).toBe(10);
  });

  it("is whole where it snaps, and a tenth of a degree else", () => {
    expect(angleNear(layout, 36.1, 90, true)).toBe(91);
    expect(angleNear(layout, 36.1, 90, false)).toBe(90.5);
  });
});
