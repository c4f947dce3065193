// Covers: src/design/pattern/ribbon.ts, src/relief/ribbons/taper-along.ts
import { Resvg } from "@resvg/resvg-js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ribbonSchema } from "../../../src/design/pattern/ribbon.js";
import { fromGrid } from "../../../src/flat/grid.js";
import { clipAlong } from "../../../src/flat/polygons.js";
import { completeArt } from "../../../src/relief/art.js";
import { taperOf, widestOf } from "../../../src/relief/ribbons/tapered-ribbon.js";
import { areaOf, collector, differenceArea, failureOf, region, type StripInput, stripOf } from "../../flat/strips.js";

/** A ribbon's region, its area in one period, mm², and the warnings' codes. */
function complete(path: string, ribbon: object, input: StripInput = {}) {
  const strip = stripOf(input);
  const { codes, warn } = collector();
  const art = completeArt(strip, region({ path, ribbon, unit: "mm" }), "pattern.regions[0]", warn);
  const area = areaOf(strip, clipAlong(art.region, 0, strip.grid.tile, 4 * strip.halfSeat));
  return { strip, art, area, codes };
}

/** A trapezoid's area: mean width times length (any handbook of geometry). */
const trapezoid = (a: number, b: number, length: number) => ((a + b) / 2) * length;

describe("tapering ribbons", () => {
  it.each([
    ["butt", 0],
    ["round", (Math.PI / 8) * (1.2 ** 2 + 0.4 ** 2)],
    ["square", 1.2 ** 2 / 2 + 0.4 ** 2 / 2],
  ] as const)("along a straight line are trapezoids that end %s with the width there", (ends, more) => {
    const { area, codes } = complete("M 1 0.5 L 5 -0.5", { width: 1.2, to: 0.4, ends }, { tolerance: 0.002 });
    expect(Math.abs(area - trapezoid(1.2, 0.4, Math.sqrt(17)) - more)).toBeLessThan(0.003);
    expect(codes).toEqual([]);
  });

  it("come to a point, and go through widths on the way", () => {
    expect(complete("M 1 0 H 5", { width: 1, to: 0 }).area).toBeCloseTo(2, 4);
    const { area } = complete("M 1 0 H 5", {
      width: 0.2,
      widths: [
        [0.25, 1],
        [0.75, 0.6],
      ],
    });
    expect(area).toBeCloseTo(trapezoid(0.2, 1, 1) + trapezoid(1, 0.6, 2) + 0.6, 4);
  });

  it("along an arc are as wide as the mean width times the arc's length", () => {
    // Pappus for a width that changes evenly about the line: the centroid of each cut lies on it.
    const { area } = complete("M 1 0 A 2 2 0 0 1 5 0", { width: 0.5, to: 0.9 }, { tolerance: 0.002 });
    expect(area / trapezoid(0.5, 0.9, 2 * Math.PI)).toBeCloseTo(1, 3);
  });

  it("of one width are the plain ribbon with round corners", () => {
    const path = "M 1 -1 L 3 1 L 3.5 -1.2 C 4 0 4.5 1 5.2 0.4";
    for (const ends of ["butt", "round", "square"]) {
      const { strip, art } = complete(path, { width: 0.6, to: 0.6, ends });
      const plain = complete(path, { width: 0.6, join: "round", ends });
      expect(differenceArea(strip, art.region, plain.art.region)).toBeLessThan(0.12);
      const inPeriod = areaOf(strip, clipAlong(art.region, 0, strip.grid.tile, 1e8));
      expect(Math.abs(inPeriod - plain.area)).toBeLessThan(0.015);
    }
  });

  it("cover what a rasteriser covers of their discs and stretches", () => {
    const path = "M 0.8 -1 L 2.6 1.2 L 3.4 -0.8 L 5 0.9";
    const { art, strip, area } = complete(path, { width: 0.3, to: 1.1, ends: "round" });
    // The same shape put together from circles and quadrilaterals, painted by resvg.
    const points = [
      [0.8, -1],
      [2.6, 1.2],
      [3.4, -0.8],
      [5, 0.9],
    ];
    const lengths = points.slice(1).map(([x, y], i) => Math.hypot(x - points[i][0], y - points[i][1]));
    const total = lengths.reduce((a, b) => a + b);
    let walked = 0;
    const halves = [0, ...lengths].map((length) => {
      walked += length;
      return 0.15 + 0.4 * (walked / total);
    });
    const shapes = points.flatMap(([x, y], i) => {
      const circle = `<circle cx="${x}" cy="${y}" r="${halves[i]}"/>`;
      if (i === 0) return [circle];
      const [px, py] = points[i - 1];
      const [nx, ny] = [-(y - py) / lengths[i - 1], (x - px) / lengths[i - 1]];
      const corner = (cx: number, cy: number, half: number) => `${cx + nx * half} ${cy + ny * half}`;
      const [r, s] = [halves[i - 1], halves[i]];
      return [
        circle,
        `<path d="M ${corner(px, py, r)} L ${corner(x, y, s)} L ${corner(x, y, -s)} L ${corner(px, py, -r)} Z"/>`,
      ];
    });
    const reference = painted(shapes.join(""));
    const rings = art.region
      .map((ring) => fromGrid(strip.grid, ring))
      .filter((ring) => ring.every(([u]) => u > 0 && u < 6))
      .map((ring) => `M ${ring.map((point) => point.join(" ")).join(" L ")} Z`);
    const own = painted(`<path d="${rings.join(" ")}"/>`);
    let apart = 0;
    for (let i = 0; i < own.length; i++) apart += Math.abs(own[i] - reference[i]) / 255;
    expect(apart / ZOOM ** 2 / area).toBeLessThan(0.004);
  });

  it("carry their widths with the images that symmetry joins to them", () => {
    const { area, art, strip } = complete("M 0 0 H 3", { width: 0.4, to: 1 }, { symmetry: "p1m1" });
    expect(area).toBeCloseTo(2 * trapezoid(0.4, 1, 3), 3);
    const span = (x: number) => areaOf(strip, clipAlong(art.region, x * 1e6, (x + 0.01) * 1e6, 1e8)) / 0.01;
    expect(span(0.01)).toBeCloseTo(0.4, 1);
    expect(span(2.98)).toBeCloseTo(1, 1);
  });

  it("go out and back where an end meets a start, and along closed lines", () => {
    const through = complete("M 0 0 H 6", { width: 0.4, to: 1 });
    expect(through.area).toBeCloseTo(trapezoid(0.4, 1, 6), 3);
    const glide = complete("M 0 0 H 3", { width: 0.4, to: 1 }, { symmetry: "p11g" });
    expect(glide.area).toBeCloseTo(2 * trapezoid(0.4, 1, 3), 3);
    const loop = complete("M 2 -1 H 4 V 1 H 2 Z", { width: 0.2, to: 0.6, side: "centre" });
    // Four trapezoids, the corners round: π/4 of a square of the half width outside, a square overlap inside.
    const corners = [0.1, 0.2, 0.3, 0.2].reduce((sum, half) => sum + (Math.PI / 4) * half ** 2, 0);
    const sides = 2 * (trapezoid(0.2, 0.4, 2) + trapezoid(0.4, 0.6, 2));
    expect(loop.area).toBeGreaterThan(sides + corners - 0.2);
    expect(loop.area).toBeLessThan(sides + corners);
  });

  it("are alike in every tile and image, whatever is drawn", () => {
    const number = (low: number, high: number) => fc.integer({ min: low * 100, max: high * 100 }).map((n) => n / 100);
    fc.assert(
      fc.property(
        fc.constantFrom("p1", "p11g", "p1m1", "p2", "p11m", "p2mg", "p2mm"),
        fc.array(fc.tuple(number(0, 6), number(-2, 2)), { minLength: 2, maxLength: 5 }),
        number(0.1, 1.5),
        number(0, 1.5),
        (symmetry, points, width, to) => {
          const [first, ...rest] = points.map((point) => point.join(" "));
          fc.pre(points.some(([x, y]) => x !== points[0][0] || y !== points[0][1]));
          const { strip, art } = complete(`M ${first} L ${rest.join(" L ")}`, { width, to }, { symmetry });
          const tile = (n: number) =>
            areaOf(strip, clipAlong(art.region, n * strip.grid.tile, (n + 1) * strip.grid.tile, 1e8));
          expect(Math.abs(tile(1) - tile(0))).toBeLessThan(1e-3);
          expect(tile(0)).toBeGreaterThan(0);
        },
      ),
      { seed: 31, numRuns: 60 },
    );
  });

  it("refuse the side of a closed line", () => {
    const error = failureOf(() => complete("M 2 -1 H 4 V 1 Z", { width: 0.2, to: 0.6 }));
    expect([error.code, error.path]).toEqual(["taper-needs-centre", "pattern.regions[0].ribbon.side"]);
  });
});

describe("a ribbon's widths in the document", () => {
  it("are one, two or several", () => {
    expect(taperOf({ width: 1 })).toBeUndefined();
    expect(taperOf({ width: 1, to: 0 })).toEqual([
      [0, 1],
      [1, 0],
    ]);
    expect(
      widestOf({
        width: 1,
        widths: [
          [0.5, 3],
          [1, 2],
        ],
      }),
    ).toBe(3);
  });

  it.each([
    [{ to: 0.2, widths: [[1, 0.3]] }, "widths"],
    [{ to: 0.2, side: "inside" }, "side"],
    [{ to: 0.2, copies: { count: 2, gap: 0.1 } }, "copies"],
    [
      {
        widths: [
          [0.5, 1],
          [0.5, 2],
        ],
      },
      "widths.1.0",
    ],
    [{ widths: [[0, 1]] }, "widths.0.0"],
    [{ to: -1 }, "to"],
    [{ copies: { count: 1, gap: 0.1 } }, "copies.count"],
    [{ copies: { count: 2, gap: 0 } }, "copies.gap"],
  ])("%o is refused at its place", (fields, path) => {
    const result = ribbonSchema.safeParse({ width: 1, ...fields });
    expect(result.error?.issues.map((issue) => issue.path.join("."))).toContain(path);
  });
});

const ZOOM = 200;

/** Grey of each pixel of shapes in mm over the tile, by resvg. */
function painted(shapes: string): Uint8Array {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 -3 6 6" width="${6 * ZOOM}" height="${6 * ZOOM}">${shapes}</svg>`;
  return new Resvg(svg).render().pixels.filter((_, i) => i % 4 === 3);
}
