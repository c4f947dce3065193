/**
 * Random trees of unions and differences against manifold-3d's CrossSection, a polygon library that is not the one used.
 */
import fc from "fast-check";
import loadManifold, { type CrossSection, type ManifoldToplevel } from "manifold-3d";
import { beforeAll, describe, expect, it } from "vitest";
import type { ShapeSpec } from "../../../src/pattern/shapes/shape-spec.js";
import { drawing, failureOf, SEED } from "../strips.js";
import { box, drawShape } from "./shapes.js";

let wasm: ManifoldToplevel;
beforeAll(async () => {
  wasm = await loadManifold();
  wasm.setup();
});

const { tree } = fc.letrec<{ tree: ShapeSpec }>((tie) => ({
  tree: fc.oneof(
    { depthSize: "small", withCrossShrink: true },
    drawing.map((path) => ({ path })),
    fc.array(tie("tree"), { minLength: 1, maxLength: 3 }).map((union) => ({ union })),
    fc.array(tie("tree"), { minLength: 2, maxLength: 3 }).map((difference) => ({ difference })),
  ),
}));

/** The same tree worked out by manifold-3d, in tile units. */
function section(spec: ShapeSpec): CrossSection {
  if ("path" in spec) {
    const rings = spec.path
      .split("Z")
      .filter((text) => text.trim() !== "")
      .map((text) => [...text.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]): [number, number] => [+x, +y]));
    return new wasm.CrossSection(rings, "NonZero");
  }
  if ("union" in spec) return wasm.CrossSection.union(spec.union.map(section));
  if ("difference" in spec) return wasm.CrossSection.difference(spec.difference.map(section));
  throw new Error("not in these trees");
}

describe("random trees of shapes", () => {
  it("have the areas that manifold-3d gives them", () => {
    fc.assert(
      fc.property(tree, (spec) => {
        const expected = section(spec).area() * 36;
        if (expected < 1e-3) return;
        expect(Math.abs(drawShape(spec).area - expected)).toBeLessThan(1e-4);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });
});

describe("shapes that leave nothing, or are lines", () => {
  const small = { path: box(0.4, 0.6, -0.1, 0.1) };
  const large = { path: box(0.2, 0.8, -0.3, 0.3) };

  it("an empty difference says where", () => {
    const error = failureOf(() => drawShape({ union: [large, { difference: [small, large] }] }));
    expect([error.code, error.path]).toEqual(["shape-empty", "shape.union[1].difference"]);
  });

  it("a line takes nothing away, but is cut off by what does", () => {
    const line = { path: "M 0 0 H 1" };
    const error = failureOf(() => drawShape({ difference: [large, line] }));
    expect([error.code, error.path]).toEqual(["shape-open", "shape.difference[1]"]);
    const { drawn } = drawShape({ difference: [line, small] });
    const ends = drawn.open.map((path) => [path[0].x, path[path.length - 1].x].sort((a, b) => a - b));
    expect(ends.sort(([a], [b]) => a - b)).toEqual([
      [0, 2.4e6],
      [3.6e6, 6e6],
    ]);
  });
});
