import { describe, expect, it } from "vitest";
import { artParts } from "../../../src/workbench/strip/art-parts.js";

const told = (document: unknown, path: readonly (string | number)[]) =>
  artParts(document, path).map((part) => [part.kind, part.at.join("."), "unit" in part ? part.unit : part.v]);

describe("what can be taken hold of", () => {
  it("is a region's path, or the place of its file or text", () => {
    const document = {
      pattern: {
        regions: [
          { path: "M0 0L1 1", unit: "mm" },
          { svg: "leaf.svg", place: { at: [0.2, 0.1] } },
          { text: { text: "A" } },
          { motif: { name: "star" } },
        ],
      },
    };
    expect(told(document, ["pattern", "regions", 0])).toEqual([["path", "pattern.regions.0.path", "mm"]]);
    expect(artParts(document, ["pattern", "regions", 1])).toEqual([
      {
        kind: "point",
        at: ["pattern", "regions", 1, "place", "at"],
        unit: "tile",
        point: [0.2, 0.1],
        place: ["pattern", "regions", 1, "place"],
      },
    ]);
    expect(artParts(document, ["pattern", "regions", 2])[0]).toMatchObject({ point: undefined });
    expect(artParts(document, ["pattern", "regions", 3])).toEqual([]);
  });

  it("is every path and point of an expression of shapes, those under a name too", () => {
    const shape = {
      difference: [
        { turns: 5, about: [0.5, 0], of: { path: "M0 0", unit: "mm" } },
        {
          mirror: [
            [0, 0],
            [0, 1],
          ],
          of: { trim: { along: "M0 0L1 0", keep: "left" }, of: { shape: "leaf" } },
        },
        { lattice: { columns: 2, rows: 2, middle: [0.1, 0] }, of: { svg: "a.svg", place: {} } },
      ],
    };
    const document = { pattern: { shapes: { leaf: { path: "M1 1" } } }, beads: [{ along: { shape } }] };
    expect(told(document, ["beads", 0])).toEqual([
      ["point", "beads.0.along.shape.difference.0.about", "tile"],
      ["path", "beads.0.along.shape.difference.0.of.path", "mm"],
      ["point", "beads.0.along.shape.difference.1.mirror.0", "tile"],
      ["point", "beads.0.along.shape.difference.1.mirror.1", "tile"],
      ["path", "beads.0.along.shape.difference.1.of.trim.along", "tile"],
      ["path", "pattern.shapes.leaf.path", "tile"],
      ["point", "beads.0.along.shape.difference.2.lattice.middle", "tile"],
      ["point", "beads.0.along.shape.difference.2.of.place.at", "tile"],
    ]);
  });

  it("is the line of a circle of beads", () => {
    expect(told({ beads: [{ along: { v: 1.2 } }] }, ["beads", 0])).toEqual([["level", "beads.0.along.v", 1.2]]);
  });

  it("ends where shapes name each other in a circle, and where there is no end of them", () => {
    const circle = {
      pattern: {
        shapes: { a: { shape: "b" }, b: { union: [{ shape: "a" }, { path: "M0 0" }] } },
        regions: [{ shape: { shape: "a" } }],
      },
    };
    expect(artParts(circle, ["pattern", "regions", 0]).length).toBeLessThanOrEqual(60);
    const wide = { pattern: { regions: [{ shape: { union: Array(500).fill({ path: "M0 0" }) } }] } };
    expect(artParts(wide, ["pattern", "regions", 0])).toHaveLength(60);
  });
});
