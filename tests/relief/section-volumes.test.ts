// Across: sections raised over regions, by their volumes
/** Raised regions against the volumes of bodies that are known in closed form, flat. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { polygonArea } from "../../src/base/math/polygon.js";
import { sectionSchema } from "../../src/design/sections/section.js";
import { triangulatePolygon } from "../../src/mesh/triangulate.js";
import { completeArt } from "../../src/relief/art.js";
import { raiseRegion } from "../../src/relief/section.js";
import {
  circle,
  collector,
  drawing,
  failureOf,
  plainBody,
  region,
  SEED,
  type StripInput,
  stripOf,
} from "../flat/strips.js";

const TILE = 6;

function raise(path: string, section: object, input: StripInput = {}) {
  const strip = stripOf({ tolerance: 0.004, tileWidth: TILE, ...input });
  const { region: whole } = completeArt(strip, region({ path }), "r", collector().warn);
  const shape = raiseRegion(strip, whole, {
    ...plainBody,
    section: sectionSchema.parse(section),
    path: "r.section",
  });
  if (shape === undefined) throw new Error("nothing was raised");
  return shape;
}

/** Between the seat and the shape's top, with upright walls below its outline, mm³. */
function volumeOf({ top }: ReturnType<typeof raise>): number {
  let sum = 0;
  for (const polygon of top) {
    const points = polygon.flat();
    const triangles = triangulatePolygon(polygon);
    for (let i = 0; i < triangles.length; i += 3) {
      const [a, b, c] = [0, 1, 2].map((k) => points[triangles[i + k]]);
      const area = ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2;
      sum += (area * (a[2] + b[2] + c[2])) / 3;
    }
  }
  return sum;
}

const square = "M 0.2 -0.25 H 0.7 V 0.25 H 0.2 Z";
const side = 0.5 * TILE;

describe("volumes", () => {
  it("a drafted square is a frustum", () => {
    const foot = side + 2 * 0.8 * Math.tan((12 * Math.PI) / 180);
    const shape = raise(square, { form: "flat", height: 0.8, draft: 12 });
    expect(volumeOf(shape)).toBeCloseTo((0.8 * (side ** 2 + side * foot + foot ** 2)) / 3, 4);
  });

  it("a ridge over a square is a pyramid", () => {
    const shape = raise(square, { form: "ridge", height: 0.9 });
    expect(Math.abs(volumeOf(shape) / ((side ** 2 * 0.9) / 3) - 1)).toBeLessThan(1e-4);
    expect(shape.height).toBeGreaterThan(0.9 - 0.004);
  });

  it("a ridge over a disc is a cone, over an oblong a hipped roof", () => {
    const cone = (Math.PI * 1.5 ** 2 * 0.9) / 3;
    expect(Math.abs(volumeOf(raise(circle(0.5, 0, 0.25), { form: "ridge", height: 0.9 })) / cone - 1)).toBeLessThan(
      0.005,
    );
    // Sides a = 1.2 and b = 4.2: h a (3 b − a) / 6.
    const roof = (0.5 * 1.2 * (3 * 4.2 - 1.2)) / 6;
    const shape = raise("M 0.1 -0.1 H 0.8 V 0.1 H 0.1 Z", { form: "ridge", height: 0.5 });
    expect(Math.abs(volumeOf(shape) / roof - 1)).toBeLessThan(1e-3);
  });

  it("a pillow over a disc is the cap of a sphere, a hollow one lacks it", () => {
    const cap = (rise: number, radius: number) => (Math.PI * rise * (3 * radius ** 2 + rise ** 2)) / 6;
    const disc = circle(0.5, 0, 0.25);
    expect(Math.abs(volumeOf(raise(disc, { form: "domed", height: 0.9 })) / cap(0.9, 1.5) - 1)).toBeLessThan(0.005);
    const hollow = volumeOf(raise(disc, { form: "hollow", height: 0.9, dip: 0.5 }));
    expect(Math.abs(hollow / (Math.PI * 1.5 ** 2 * 0.9 - cap(0.5, 1.5)) - 1)).toBeLessThan(0.005);
  });

  it("a bevelled square lacks its bevel", () => {
    const shape = raise(square, { form: "flat", height: 0.8, bevel: 0.3 });
    const inner = side - 0.6;
    expect(volumeOf(shape)).toBeCloseTo(side ** 2 * 0.5 + (0.3 * (side ** 2 + side * inner + inner ** 2)) / 3, 4);
  });
});

/** What the section says of a point inside a dumbbell of two squares with a neck: its distance to the outline decides. */
describe("regions that part before their middle", () => {
  const dumbbell = "M 0.1 -0.2 H 0.4 V -0.04 H 0.6 V -0.2 H 0.9 V 0.2 H 0.6 V 0.04 H 0.4 V 0.2 H 0.1 Z";

  it("fit every section but a flat top's edge", () => {
    expect(failureOf(() => raise(dumbbell, { form: "flat", height: 1, round: 0.4 })).code).toBe("round-too-large");
    const shape = raise(dumbbell, { form: "ridge", slope: 45 });
    // Two hipped roofs 1.8 × 2.4, and a gable 0.48 wide between them that runs on into both.
    const heads = (2 * 0.9 * 1.8 * (3 * 2.4 - 1.8)) / 6;
    const neck = 0.24 ** 2 * 1.2;
    expect(volumeOf(shape)).toBeGreaterThan(heads + neck);
    expect(volumeOf(shape)).toBeLessThan(heads + neck + 2 * 0.24 ** 2 * 0.48);
  });

  it("are as high in every part as that part is wide", () => {
    const shape = raise(`${square} M 0.75 -0.1 H 0.95 V 0.1 H 0.75 Z`, { form: "ridge", slope: 45 });
    const heights = shape.top.flat(2).filter(([u]) => u % TILE > 0.74 * TILE && u % TILE < 0.96 * TILE);
    // Contours are no nearer than 2 µm, nor to the middle than another 2 to 4: at 45° as much is missing of the height.
    expect(Math.abs(Math.max(...heights.map(([, , h]) => h)) - 0.6)).toBeLessThan(0.008);
  });
});

it("a section turns random drawings into surfaces over the whole of their outline", () => {
  const sections = fc.constantFrom<object>(
    { form: "domed", height: 0.3, reach: 0.4 },
    { form: "ridge", slope: 40, nose: 0.02 },
    { form: "hollow", height: 0.5, dip: 0.1, reach: 0.3, round: 0.05 },
    { form: "flat", height: 0.4, draft: 10 },
  );
  fc.assert(
    fc.property(drawing, sections, (path, section) => {
      const shape = raise(path, section, { tolerance: 0.02 });
      const area = (polygons: typeof shape.top) =>
        polygons.flat().reduce((sum, ring) => sum + polygonArea(ring.map(([u, v]) => [u, v])), 0);
      expect(area(shape.top)).toBeCloseTo(area(shape.outline), 5);
      for (const [, , h] of shape.top.flat(2)) expect(h >= 0 && h <= shape.height).toBe(true);
    }),
    { seed: SEED, numRuns: 40 },
  );
});
