// Covers: src/art/shapes/budget.ts, src/art/shapes/motif-leaf.ts, src/art/shapes/named.ts
// Covers: src/design/shapes/motif-leaf.ts, src/design/shapes/named.ts
/** Shapes made to stall are refused, each with its place; so are names that lead nowhere. */

import { describe, expect, it } from "vitest";
import type { ShapeSpec } from "../../../src/design/shapes/shape-spec.js";
import { circle, failureOf } from "../../flat/strips.js";
import { box, drawShape } from "./shapes.js";

const dot: ShapeSpec = { path: circle(0.6, 0.1, 0.1) };

/** A shape wrapped so many times over. */
function nest(shape: ShapeSpec, times: number, wrap: (inner: ShapeSpec, depth: number) => ShapeSpec): ShapeSpec {
  return Array.from({ length: times }).reduce((inner: ShapeSpec, _, depth) => wrap(inner, depth), shape);
}

describe("a shape made to stall", () => {
  const dots = nest(dot, 3, (inner) => ({ union: Array<ShapeSpec>(200).fill(inner) }));
  it.each<[string, ShapeSpec]>([
    ["nested deep", nest(dot, 40, (of) => ({ turns: 2, of }))],
    ["turned over and over", nest(dot, 8, (of, i) => ({ turns: 36, about: [0.5 + i / 100, i / 50], of }))],
    ["copied over and over", nest(dot, 4, (of) => ({ lattice: { columns: 60, rows: 60 }, of }))],
    ["listed over and over", dots],
    ["tangled", { turns: 360, of: { path: box(0.1, 0.9, -0.01, 0.01) } }],
    ["of a thousand lines", { lattice: { columns: 60, rows: 60 }, of: { path: "M 0.49 0 H 0.51" } }],
  ])("%s is refused", (_, spec) => {
    const error = failureOf(() => drawShape(spec));
    expect(error.code).toBe("shape-too-complex");
    expect(error.path).toMatch(/^shape/);
  });

  it("through names is refused too", () => {
    const chain = Array.from({ length: 40 }, (_, i): [string, ShapeSpec] => [
      `n${i}`,
      { union: Array<ShapeSpec>(9).fill({ shape: `n${i + 1}` }) },
    ]);
    const named = Object.fromEntries([...chain, ["n40", dot]]);
    expect(failureOf(() => drawShape({ shape: "n0" }, { named })).code).toBe("shape-too-complex");
  });
});

describe("names", () => {
  it("stand for shapes, drawn once however often they are used", () => {
    const named = {
      dot,
      pair: {
        union: [
          { shape: "dot" },
          {
            mirror: [
              [0.5, 0],
              [0.5, 1],
            ],
            of: { shape: "dot" },
          },
        ],
      },
    };
    const { area } = drawShape({ shape: "pair" }, { named: named as unknown as Record<string, ShapeSpec> });
    expect(area).toBeGreaterThan(drawShape(dot).area * 1.2);
    const many = Array<ShapeSpec>(200).fill({ shape: "dot" });
    expect(drawShape({ union: many.slice(0, 20) }, { named: { dot } }).area).toBeCloseTo(drawShape(dot).area, 9);
  });

  it("that lead back to themselves say how", () => {
    const named: Record<string, ShapeSpec> = { a: { union: [{ shape: "b" }] }, b: { turns: 3, of: { shape: "a" } } };
    const error = failureOf(() => drawShape({ shape: "a" }, { named }));
    expect([error.code, error.path]).toEqual(["shape-cycle", "pattern.shapes.b.of.shape"]);
    expect(error.message).toContain("a → b → a");
  });

  it("that are not there name the nearest", () => {
    const error = failureOf(() => drawShape({ union: [{ shape: "leef" }] }, { named: { leaf: dot } }));
    expect(error).toMatchObject({ code: "shape-unknown", path: "shape.union[0].shape", hint: 'did you mean "leaf"?' });
  });
});

describe("what a motif draws", () => {
  it("has the motif's place in errors", () => {
    const lattice = { columns: 3, rows: 1, set: "half-drop" };
    const error = failureOf(() => drawShape({ lattice, of: { motif: { name: "lozenge" } } }));
    expect(error.path).toBe("shape.lattice.columns");
  });

  it("is in tile units, whatever its region's", () => {
    const of = { motif: { name: "lozenge", width: 0.5, height: 0.4 } };
    expect(drawShape(of, { unit: "mm" }).area).toBeCloseTo((0.5 * 0.4 * 36) / 2, 5);
    expect(drawShape(of).area).toBeCloseTo((0.5 * 0.4 * 36) / 2, 5);
  });
});
