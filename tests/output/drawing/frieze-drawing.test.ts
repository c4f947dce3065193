// Covers: src/output/drawing/symmetry-marks.ts
import { describe, expect, it } from "vitest";
import { friezeGroups } from "../../../src/base/frieze/symmetry.js";
import { drawFriezeGroups } from "../../../src/output/drawing/frieze-drawing.js";
import { covered, ofClass, onlyClass, parseSvg, sheetSize } from "./raster.js";

/** Pixels a millimetre. */
const ZOOM = 24;

describe("the chart of frieze groups", () => {
  const svg = drawFriezeGroups();
  const document = parseSvg(svg);
  const motifArea = (name: string) => {
    const [drawn] = ofClass(document, name);
    return [...drawn.getElementsByTagName("path")].filter((path) => path.getAttribute("class") === "motif").length;
  };

  it("is well-formed and in millimetres", () => {
    expect(sheetSize(document).width).toBeGreaterThan(100);
    expect(svg.length).toBeLessThan(60_000);
  });

  it.each(friezeGroups.map(({ name, operations }) => [name, operations.length]))(
    "shows %s with %i motifs in each of its three tiles, none over another",
    (name, order) => {
      expect(motifArea(name)).toBe(3 * order);
      // Images that lay over each other, or beyond the sheet, would cover less.
      const one = covered(onlyClass(onlyClass(svg, "p1"), "motif"), ZOOM).area;
      const { area } = covered(onlyClass(onlyClass(svg, name), "motif"), ZOOM);
      expect(area / (one * order)).toBeCloseTo(1, 2);
    },
  );

  it.each([
    ["p1", 0, 0],
    ["p11g", 0, 1],
    ["p1m1", 7, 0],
    ["p2", 0, 0],
    ["p11m", 1, 0],
    ["p2mg", 7, 1],
    ["p2mm", 8, 0],
  ])("marks %s with %i mirrors and %i glides", (name, mirrors, glides) => {
    const [drawn] = ofClass(document, name);
    const marks = [...drawn.getElementsByTagName("g")].find((one) => one.getAttribute("class") === "symmetry");
    const lines = [...(marks?.getElementsByTagName("path") ?? [])].filter(
      (path) => path.getAttribute("class") !== "two-fold",
    );
    const dashed = lines.filter((path) => path.hasAttribute("stroke-dasharray"));
    expect([lines.length - dashed.length, dashed.length]).toEqual([mirrors, glides]);
  });

  it("shades the half or quarter of a tile that the group's order leaves", () => {
    const shade = (name: string) =>
      covered(onlyClass(onlyClass(svg, name), "fundamental-region").replaceAll(/fill-opacity="[^"]*"/g, ""), ZOOM).area;
    for (const { name, operations } of friezeGroups) {
      expect((shade(name) * operations.length) / shade("p1")).toBeCloseTo(1, 2);
    }
  });
});
