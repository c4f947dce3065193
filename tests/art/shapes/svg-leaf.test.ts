// Covers: src/design/shapes/svg-leaf.ts
import { describe, expect, it } from "vitest";
import { readSvg } from "../../../src/art/svg/read-svg.js";
import { failureOf } from "../../flat/strips.js";
import { svg } from "../svg/svgs.js";
import { drawShape } from "./shapes.js";

/** A page of 100 with a square of half its width in its lower right corner. */
const drawing = readSvg(svg('<rect x="50" y="50" width="50" height="50"/>'), "a.svg", "svg", () => undefined);
const drawings = new Map([["a.svg", drawing]]);
const draw = (spec: object, input = {}) => drawShape(spec, { drawings, ...input });

/** The box round what is drawn, mm; tiles are 6 mm wide, y runs from −3 to 3. */
function boxOf(spec: object, input = {}) {
  const points = draw(spec, input).drawn.closed.flat();
  const [x, y] = (["x", "y"] as const).map((axis) => points.map((point) => point[axis] / 1e6));
  return [Math.min(...x), Math.max(...x), Math.min(...y), Math.max(...y)].map((mm) => Number(mm.toFixed(4)));
}

describe("a drawing as a shape", () => {
  it("fills the tile in its proportions, upright: what is low in the file is low in the tile", () => {
    expect(boxOf({ svg: "a.svg" })).toEqual([3, 6, -3, 0]);
    expect(draw({ svg: "a.svg" }).area).toBeCloseTo(9, 6);
  });

  it("stands where its place says, in its own unit or else in the region's", () => {
    const place = { fit: [2, 2], at: [3, 0] };
    expect(boxOf({ svg: "a.svg", place, unit: "mm" })).toEqual([3, 4, -1, 0]);
    expect(boxOf({ svg: "a.svg", place }, { unit: "mm" })).toEqual([3, 4, -1, 0]);
    expect(boxOf({ svg: "a.svg", place: { fit: [0.5, 0.5], at: [0.5, 0] }, unit: "tile" }, { unit: "mm" })).toEqual([
      3, 4.5, -1.5, 0,
    ]);
  });

  it("is worked on as any other shape is", () => {
    const hole = { path: "M 0.5 -0.25 H 1 V 0 H 0.5 Z" };
    expect(draw({ difference: [{ svg: "a.svg" }, hole] }).area).toBeCloseTo(4.5, 6);
    expect(
      draw({
        union: [
          { svg: "a.svg" },
          {
            mirror: [
              [0.5, -1],
              [0.5, 1],
            ],
            of: { svg: "a.svg" },
          },
        ],
      }).area,
    ).toBeCloseTo(18, 6);
  });

  it("that was not loaded is told with its place", () => {
    const error = failureOf(() => draw({ union: [{ svg: "a.svg" }, { svg: "b.svg" }] }));
    expect([error.code, error.path, error.value]).toEqual(["svg-file-missing", "shape.union[1].svg", "b.svg"]);
  });
});
