// Covers: src/design/areas.ts
import { expect, it } from "vitest";
import { drawingNames } from "../../src/art/drawing-names.js";
import { readDesign } from "../../src/design/read.js";
import { PLAIN } from "../cli/support.js";

/** Names and places, of a document's pattern and runs. */
function found(pattern: object, beads: readonly object[] = []): [string, string][] {
  const design = readDesign({ ...PLAIN, pattern: { fit: { repeats: 6 }, ...pattern }, beads });
  if (design.pattern === undefined) throw new Error("the document has a pattern");
  return drawingNames(design.pattern, design.beads).map(({ name, where }) => [name, where]);
}

const svg = (name: string) => ({ svg: name, height: 0.2 });
const shaped = (name: string) => ({ shape: { svg: name }, height: 0.2 });

it("are those of named shapes, tiles, medallion, ornaments and runs of beads, each with its place", () => {
  const pattern = {
    shapes: { leaf: { svg: "leaf.svg" }, "a.b": { union: [{ svg: "odd.svg" }, { path: "M 0 0 H 0.1 V 0.1 Z" }] } },
    regions: [svg("tile.svg"), { path: "M 0 0 H 0.1 V 0.1 Z", height: 0.2 }, shaped("inner.svg")],
    cover: 180,
    medallion: { tiles: 2, regions: [svg("middle.svg")] },
    ends: { form: "ornament", tiles: 1, regions: [svg("end.svg")] },
  };
  expect(found(pattern, [{ along: { shape: { svg: "line.svg" } }, diameter: 0.4 }])).toEqual([
    ["leaf.svg", "pattern.shapes.leaf.svg"],
    ["odd.svg", 'pattern.shapes["a.b"].union[0].svg'],
    ["tile.svg", "pattern.regions[0].svg"],
    ["inner.svg", "pattern.regions[2].shape.svg"],
    ["middle.svg", "pattern.medallion.regions[0].svg"],
    ["end.svg", "pattern.ends.regions[0].svg"],
    ["line.svg", "beads[0].along.shape.svg"],
  ]);
});

it("are those of every lane", () => {
  const lanes = [{ regions: [svg("a.svg")] }, { regions: [svg("b.svg"), shaped("a.svg")] }];
  expect(found({ lanes: lanes.map((lane) => ({ share: 1, ...lane })), fit: {} }).map(([name]) => name)).toEqual([
    "a.svg",
    "b.svg",
    "a.svg",
  ]);
});

it("are none where all is drawn by paths", () => {
  expect(
    found({ regions: [{ path: "M 0 0 H 0.1 V 0.1 Z", height: 0.2 }] }, [{ along: { v: 0 }, diameter: 0.3 }]),
  ).toEqual([]);
});
