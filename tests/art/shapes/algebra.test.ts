// Covers: src/art/shapes/axis.ts, src/art/shapes/copies.ts, src/art/shapes/difference.ts
// Covers: src/art/shapes/draw-shape.ts, src/art/shapes/glide.ts, src/art/shapes/index.ts
// Covers: src/art/shapes/intersection.ts, src/art/shapes/mirror.ts, src/art/shapes/offset.ts
// Covers: src/art/shapes/path-leaf.ts, src/art/shapes/rules.ts, src/art/shapes/trim.ts, src/art/shapes/union.ts
// Covers: src/design/shapes/difference.ts, src/design/shapes/fields.ts, src/design/shapes/glide.ts
// Covers: src/design/shapes/intersection.ts, src/design/shapes/mirror.ts, src/design/shapes/offset.ts
// Covers: src/design/shapes/path-leaf.ts, src/design/shapes/rules.ts, src/design/shapes/shape.ts
// Covers: src/design/shapes/trim.ts, src/design/shapes/union.ts
/**
 * Random trees of shapes against manifold-3d's CrossSection, whose polygons are worked on in C++ and in other units, and
 * single shapes against closed forms.
 */

import fc from "fast-check";
import loadManifold, { type CrossSection, type ManifoldToplevel } from "manifold-3d";
import { beforeAll, describe, expect, it } from "vitest";
import type { ShapeSpec } from "../../../src/design/shapes/shape-spec.js";
import { circle, drawing, failureOf, SEED } from "../../flat/strips.js";
import { box, drawShape } from "./shapes.js";

let wasm: ManifoldToplevel;
beforeAll(async () => {
  wasm = await loadManifold();
  wasm.setup();
});

const hundredth = (low: number, high: number) =>
  fc.integer({ min: Math.round(low * 100), max: Math.round(high * 100) }).map((n) => n / 100);
const point = fc.tuple(hundredth(0, 1), hundredth(-0.4, 0.4));
const axis = fc.tuple(point, point).filter(([[ax, ay], [bx, by]]) => Math.hypot(bx - ax, by - ay) > 0.1);

const { tree } = fc.letrec<{ tree: ShapeSpec }>((tie) => {
  const list = (minLength: number) => fc.array(tie("tree"), { minLength, maxLength: 3 });
  const of = tie("tree");
  return {
    tree: fc.oneof(
      { depthSize: "small", withCrossShrink: true },
      drawing.map((path) => ({ path })),
      list(1).map((union) => ({ union })),
      list(2).map((difference) => ({ difference })),
      list(2).map((intersection) => ({ intersection })),
      fc.record({ turns: fc.integer({ min: 2, max: 5 }), about: point, of }),
      fc.record({ mirror: axis, of }),
      fc.record({ glide: axis, by: hundredth(-0.2, 0.2), of }),
      fc.record({ of, line: axis, keep: fc.constantFrom("left" as const, "right" as const) }).map((spec) => ({
        trim: { along: `M ${spec.line.map((at) => at.join(" ")).join(" L ")}`, keep: spec.keep },
        of: spec.of,
      })),
    ),
  };
});

/** The same tree worked out by manifold-3d, in tile units. */
function section(spec: ShapeSpec): CrossSection {
  if ("path" in spec) {
    const rings = spec.path
      .split("Z")
      .filter((text) => text.trim() !== "")
      .map((text) => numbersIn(text));
    return new wasm.CrossSection(rings, "NonZero");
  }
  if ("union" in spec) return wasm.CrossSection.union(spec.union.map(section));
  if ("difference" in spec) return wasm.CrossSection.difference(spec.difference.map(section));
  if ("intersection" in spec) return wasm.CrossSection.intersection(spec.intersection.map(section));
  if ("turns" in spec) {
    const { turns, of } = spec;
    const [x, y] = spec.about as [number, number];
    const one = section(of).translate([-x, -y]);
    const copies = Array.from({ length: turns }, (_, i) => one.rotate((360 * i) / turns));
    return wasm.CrossSection.union(copies).translate([x, y]);
  }
  if ("mirror" in spec) return section(spec.of).add(mirrored(section(spec.of), spec.mirror));
  if ("glide" in spec) {
    const [[ax, ay], [bx, by]] = spec.glide;
    const length = Math.hypot(bx - ax, by - ay);
    const step = [((bx - ax) * spec.by) / length, ((by - ay) * spec.by) / length] as const;
    return section(spec.of).add(mirrored(section(spec.of), spec.glide).translate(step));
  }
  if ("trim" in spec) {
    const [a, b] = numbersIn(spec.trim.along);
    const far = 100;
    const half = wasm.CrossSection.square([2 * far, far]).translate([-far, spec.trim.keep === "left" ? 0 : -far]);
    const angle = (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
    return section(spec.of).intersect(half.rotate(angle).translate(a));
  }
  throw new Error("not in these trees");
}

function mirrored(part: CrossSection, [[ax, ay], [bx, by]]: readonly (readonly [number, number])[]): CrossSection {
  const across: [number, number] = [ay - by, bx - ax];
  return part.translate([-ax, -ay]).mirror(across).translate([ax, ay]);
}

function numbersIn(path: string): [number, number][] {
  return [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}

describe("random trees of shapes", () => {
  it("have the areas that manifold-3d gives them", () => {
    let compared = 0;
    fc.assert(
      fc.property(tree, (spec) => {
        const expected = section(spec).area() * 36;
        try {
          expect(Math.abs(drawShape(spec).area - expected)).toBeLessThan(2e-4);
          compared++;
        } catch (error) {
          // What leaves its tile, and a part that leaves nothing, is refused; all else must agree.
          const { code } = error as { readonly code?: string };
          if (code !== "shape-empty" && code !== "path-outside-tile") throw error;
        }
      }),
      { seed: SEED, numRuns: 300 },
    );
    expect(compared).toBeGreaterThan(100);
  });
});

describe("offsets (closed forms)", () => {
  const [side, d] = [1.2, 0.15];
  const square = { path: box(0.4, 0.6, -0.1, 0.1) };

  it.each<[string, object, number]>([
    ["a square grown with its corners", { offset: d, of: square }, (side + 2 * d) ** 2],
    [
      "a square grown round its corners",
      { offset: d, join: "round", of: square },
      side ** 2 + 4 * side * d + Math.PI * d ** 2,
    ],
    ["a square shrunk", { offset: -d, of: square }, (side - 2 * d) ** 2],
    [
      "a square opened: shrunk, then grown round",
      { offset: d, join: "round", of: { offset: -d, of: square } },
      side ** 2 - (4 - Math.PI) * d ** 2,
    ],
  ])("%s", (_, spec, area) => {
    expect(drawShape(spec, { tolerance: 1e-3 }).area).toBeCloseTo(area, 3);
  });

  it("that leave nothing say the largest that leaves something", () => {
    const error = failureOf(() => drawShape({ union: [{ offset: -0.7, of: square }] }));
    expect([error.code, error.path]).toEqual(["offset-too-large", "shape.union[0].offset"]);
    expect(error.allowed).toBe("at least -0.599 mm");
    expect(drawShape({ offset: -0.599, of: square }).area).toBeGreaterThan(0);
  });

  it("are for regions, not for lines", () => {
    const error = failureOf(() => drawShape({ offset: 0.1, of: { path: "M 0 0 H 1" } }));
    expect([error.code, error.path]).toEqual(["shape-open", "shape.of"]);
  });
});

describe("trimming along a curve", () => {
  const disc = { path: circle(0.5, 0, 0.4) };

  it("leaves the two sides, which together are the whole", () => {
    const along = "M 0.3 -0.1 C 0.5 0.3 0.5 -0.3 0.7 0.1";
    const [left, right] = ["left", "right"].map((keep) => drawShape({ trim: { along, keep }, of: disc }).area);
    expect(left + right).toBeCloseTo(drawShape(disc).area, 5);
    // The curve is its own image under the half turn about the middle.
    expect(left).toBeCloseTo(right, 4);
  });

  it("cuts lines too", () => {
    const { drawn } = drawShape({ trim: { along: "M 0.5 0 V 0.1", keep: "right" }, of: { path: "M 0 0 H 1" } });
    expect(drawn.open.map((line) => line.map(({ x }) => x).sort((a, b) => a - b))).toEqual([[3e6, 6e6]]);
  });

  it.each([
    ["a closed line", circle(0.5, 0, 0.1)],
    ["two lines", "M 0 0 H 1 M 0 0.1 H 1"],
    ["a line that crosses itself", "M 0 0 L 1 0 L 0.5 0.5 L 0.5 -0.5"],
    ["ends that would cross each other", "M 0.4 0.2 L 0.3 0 L 0.7 0 L 0.6 0.2"],
  ])("along %s is refused", (_, along) => {
    const error = failureOf(() => drawShape({ trim: { along, keep: "left" }, of: disc }));
    expect([error.code, error.path]).toEqual(["trim-line", "shape.trim.along"]);
  });

  it("says when nothing lies on the side that is kept", () => {
    const error = failureOf(() => drawShape({ trim: { along: "M 0 0.45 H 1", keep: "left" }, of: disc }));
    expect([error.code, error.path]).toEqual(["shape-empty", "shape.trim"]);
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
