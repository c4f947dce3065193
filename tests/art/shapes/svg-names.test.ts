import { expect, it } from "vitest";
import { svgNames } from "../../../src/art/shapes/svg-names.js";
import type { ShapeSpec } from "../../../src/design/shapes/shape-spec.js";

const names = (shape: unknown) => svgNames(shape as ShapeSpec, "s").map(({ name, where }) => `${name} ${where}`);

it("finds drawings in every list, however deep, in the order of the document", () => {
  const shape = {
    union: [
      { svg: "a.svg" },
      { difference: [{ path: "M 0 0" }, { offset: 0.1, of: { svg: "b.svg" } }] },
      { intersection: [{ svg: "c.svg" }, { mirror: "x", of: { union: [{ svg: "a.svg" }] } }] },
    ],
  };
  expect(names(shape)).toEqual([
    "a.svg s.union[0].svg",
    "b.svg s.union[1].difference[1].of.svg",
    "c.svg s.union[2].intersection[0].svg",
    "a.svg s.union[2].intersection[1].of.union[0].svg",
  ]);
});

it("finds none in paths, motifs and shapes that are named", () => {
  expect([{ path: "M 0 0" }, { motif: "star" }, { named: "leaf" }, { union: [] }].flatMap(names)).toEqual([]);
});
