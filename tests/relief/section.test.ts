// Covers: src/relief/contours.ts
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { friezeGroups } from "../../src/base/frieze/symmetry.js";
import type { Point3 } from "../../src/base/math/point.js";
import type { SectionSpec } from "../../src/design/sections/section.js";
import { completeArt } from "../../src/relief/art.js";
import type { FlatBody, ReliefPolygon } from "../../src/relief/flat-body.js";
import { raiseRegion } from "../../src/relief/section.js";
import {
  areaOf,
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

const flat = (height: number, round: number): SectionSpec => ({ form: "flat", height, round, bevel: 0, draft: 0 });

function raise(path: string, round: number, input: StripInput = {}, height = 0.5): FlatBody {
  const strip = stripOf(input);
  const { region: whole } = completeArt(strip, region({ path }), "pattern.regions[0]", collector().warn);
  const shape = raiseRegion(strip, whole, {
    ...plainBody,
    section: flat(height, round),
    path: "pattern.regions[0]",
  });
  if (shape === undefined) throw new Error("nothing was raised");
  return shape;
}

function ringAreaOf(ring: readonly Point3[]): number {
  return ring.reduce((sum, [x, y], i) => {
    const [nx, ny] = ring[(i + 1) % ring.length];
    return sum + (x * ny - nx * y) / 2;
  }, 0);
}

const areaOn = (polygons: readonly ReliefPolygon[]) => polygons.flat().reduce((sum, ring) => sum + ringAreaOf(ring), 0);

/** Sides that polygons have and no other has the other way round, but for those on the seam and on the outline. */
function openSides({ top, outline, seam }: FlatBody): number {
  const key = (a: Point3, b: Point3) => `${a.join(" ")}|${b.join(" ")}`;
  const keysOf = (polygons: readonly ReliefPolygon[]) =>
    new Set(polygons.flat().flatMap((ring) => ring.map((a, i) => key(a, ring[(i + 1) % ring.length]))));
  const [sides, foot] = [keysOf(top), keysOf(outline)];
  let open = 0;
  for (const ring of top.flat()) {
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length];
      const onSeam = seam?.some((u) => a[0] === u && b[0] === u) ?? false;
      if (!onSeam && !sides.has(key(b, a)) && !foot.has(key(a, b))) open++;
    });
  }
  return open;
}

/** A dumbbell: two heads of radius 0.15 tiles, joined by a neck of the given half height from x1 to x2. */
const dumbbell = (half: number) =>
  `M 0.1 -0.2 H 0.4 V ${-half} H 0.6 V -0.2 H 0.9 V 0.2 H 0.6 V ${half} H 0.4 V 0.2 H 0.1 Z`;

/** Two heads whose neck is narrowest at one place: arcs of circles that come nearest at (x, y). */
const hourglass = (x: number, y: number, half: number) =>
  `M 0.05 ${y - 0.25} H ${x - 0.2} A 0.2 0.2 0 0 0 ${x} ${y - half} A 0.2 0.2 0 0 0 ${x + 0.2} ${y - 0.25} H 0.95 V ${y + 0.25} H ${x + 0.2} A 0.2 0.2 0 0 0 ${x} ${y + half} A 0.2 0.2 0 0 0 ${x - 0.2} ${y + 0.25} H 0.05 Z`;

function complaint(path: string, round: number, input: StripInput = {}) {
  const error = failureOf(() => raise(path, round, input));
  const [, width, x, y] =
    /only ([\d.]+) mm wide at its narrowest, near x ([\d.-]+), y ([\d.-]+) of/.exec(error.message) ?? [];
  const largest = /^0 to ([\d.]+) mm/.exec(error.allowed ?? "")?.[1];
  return { error, width: Number(width), x: Number(x), y: Number(y), largest: Number(largest) };
}

describe("raising a region", () => {
  it("makes nested contours that share their vertices, for random drawings", () => {
    let raised = 0;
    fc.assert(
      fc.property(drawing, fc.constantFrom(...friezeGroups.map(({ name }) => name)), (path, symmetry) => {
        const strip = stripOf({ symmetry });
        const { region: whole } = completeArt(strip, region({ path }), "r", collector().warn);
        let shape: FlatBody | undefined;
        try {
          shape = raiseRegion(strip, whole, { ...plainBody, section: flat(0.4, 0.05), path: "r" });
        } catch (error) {
          expect(error).toMatchObject({ code: "round-too-large" });
          return;
        }
        if (shape === undefined) throw new Error("nothing was raised");
        raised++;
        expect(areaOn(shape.top)).toBeCloseTo(areaOn(shape.outline), 5);
        expect(openSides(shape)).toBe(0);
        for (const ring of shape.top.flat())
          for (const [, , h] of ring) expect(h >= 0.35 - 1e-12 && h <= 0.4).toBe(true);
        for (const [outer, ...holes] of shape.top) {
          expect(ringAreaOf(outer)).toBeGreaterThan(0);
          for (const hole of holes) expect(ringAreaOf(hole)).toBeLessThan(0);
        }
      }),
      { seed: SEED, numRuns: 60 },
    );
    expect(raised).toBeGreaterThan(20);
  });

  it("is flat on top without a rounding", () => {
    const shape = raise("M 0.1 -0.1 H 0.6 V 0.2 Z", 0);
    expect(shape.top).toEqual(shape.outline);
    expect(shape.seam).toHaveLength(2);
    expect(shape.height).toBe(0.5);
  });

  it("approaches a quarter round's volume as it should", () => {
    // Prism of side s and height H with its top edge rounded by ρ all round: what is lost lies between insets
    // ρ (1 − cos φ): ∫ (s² − (s − 2 i)²) dh with i, h as in the file's head, = ρ² (4 s (1 − π/4) − 4 ρ (5/3 − π/2)).
    const [s, rho] = [3, 0.3];
    const shape = raise("M 0.2 -0.25 H 0.7 V 0.25 H 0.2 Z", rho, { tolerance: 1e-5 });
    const heights = [...new Set(shape.top.flat(2).map(([, , h]) => h))].sort((a, b) => a - b);
    const areaAt = (h: number) => {
      const rings = shape.top.flat().filter((ring) => ring.every((point) => point[2] === h));
      return Math.max(...rings.map((ring) => Math.abs(ringAreaOf(ring))));
    };
    let lost = 0;
    for (let i = 1; i < heights.length; i++) {
      lost += (heights[i] - heights[i - 1]) * (s * s - (areaAt(heights[i]) + areaAt(heights[i - 1])) / 2);
    }
    expect(lost).toBeCloseTo(rho ** 2 * (4 * s * (1 - Math.PI / 4) - 4 * rho * (5 / 3 - Math.PI / 2)), 3);
  });

  it("raises nothing of an empty region", () => {
    expect(raiseRegion(stripOf(), [], { ...plainBody, section: flat(1, 0), path: "r" })).toBeUndefined();
  });
});

describe("a rounding that does not fit", () => {
  it("is not higher than the region", () => {
    const error = failureOf(() => raise("M 0.1 -0.3 H 0.7 V 0.3 H 0.1 Z", 0.6));
    expect([error.code, error.path, error.allowed]).toEqual([
      "round-too-large",
      "pattern.regions[0].round",
      "0 to 0.5 mm",
    ]);
  });

  it("names the neck of a dumbbell, its width and its place", () => {
    const { error, width, x, y, largest } = complaint(dumbbell(0.02), 0.2);
    expect([error.code, error.path, error.value]).toEqual(["round-too-large", "pattern.regions[0].round", 0.2]);
    expect(Math.abs(width - 0.24)).toBeLessThanOrEqual(0.002);
    expect(Math.abs(x - 0.5)).toBeLessThan(0.05);
    expect(Math.abs(y)).toBeLessThan(0.05);
    expect(raise(dumbbell(0.02), largest).height).toBe(0.5);
    expect(failureOf(() => raise(dumbbell(0.02), largest + 0.003)).code).toBe("round-too-large");
  });

  it("names the narrowest place of a curved neck wherever it is, among tips that are narrower", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 30, max: 70 }),
        fc.integer({ min: -10, max: 10 }),
        fc.integer({ min: 10, max: 30 }),
        (hundredX, hundredY, thousandHalf) => {
          const [cx, cy, half] = [hundredX / 100, hundredY / 100, thousandHalf / 1000];
          const tips = "M 0.02 0.45 L 0.98 0.48 L 0.98 0.49 Z";
          const path = `${hourglass(cx, cy, half)} ${tips}`;
          const { width, x, y, largest } = complaint(hourglass(cx, cy, half), 0.25);
          // The arcs' chords lie up to 5 µm from them, on either side of the neck.
          expect(Math.abs(width - 12 * half)).toBeLessThanOrEqual(0.012);
          expect(Math.abs(x - cx)).toBeLessThan(0.05);
          expect(Math.abs(y - cy)).toBeLessThan(0.05);
          expect(raise(hourglass(cx, cy, half), largest).height).toBe(0.5);
          expect(failureOf(() => raise(path, 0.25)).code).toBe("round-too-large");
        },
      ),
      { seed: SEED, numRuns: 12 },
    );
  });

  it("names a part that would vanish, and the wall of a hole", () => {
    const dot = complaint(`M 0.1 -0.3 H 0.6 V 0.3 H 0.1 Z ${circle(0.8, 0.2, 0.02)}`, 0.2);
    // The circle's chords lie up to 5 µm inside it.
    expect(dot.width).toBeGreaterThan(0.229);
    expect(dot.width).toBeLessThanOrEqual(0.24);
    expect(dot.x).toBeCloseTo(0.8, 1);
    expect(dot.y).toBeCloseTo(0.2, 1);
    const wall = complaint(`M 0.1 -0.3 H 0.8 V 0.3 H 0.1 Z M 0.3 -0.1 V 0.1 H 0.77 V -0.1 Z`, 0.2);
    expect(Math.abs(wall.width - 0.18)).toBeLessThanOrEqual(0.002);
    expect(wall.x).toBeCloseTo(0.785, 1);
    expect(wall.y).toBeCloseTo(0, 1);
  });

  it("is seen even where one part splits while another vanishes", () => {
    const path = `${dumbbell(0.02)} ${circle(0.5, 0.3, 0.02)}`;
    expect(failureOf(() => raise(path, 0.2)).code).toBe("round-too-large");
  });

  it("is not a matter of tips, nor of where the copies lie along the strip", () => {
    expect(raise("M 0.05 -0.3 L 0.95 -0.25 L 0.05 0.1 Z", 0.1).height).toBe(0.5);
    for (const x of [0, 0.1, 0.2, 0.3, 0.4, 0.5]) {
      expect(raise(`M ${x} -0.1 H ${x + 0.2} V 0.2 H ${x} Z`, 0.1).height).toBe(0.5);
    }
  });

  it("counts within a pattern that stops as well", () => {
    const { width } = complaint(dumbbell(0.02), 0.2, { cover: 120, repeats: 3 });
    expect(Math.abs(width - 0.24)).toBeLessThanOrEqual(0.002);
  });
});

describe("a raised region", () => {
  it("has the area of its drawing", () => {
    const strip = stripOf();
    const { region: whole } = completeArt(strip, region({ path: circle(0.5, 0, 0.3) }), "r", collector().warn);
    const tiles = Math.round(areaOf(strip, whole) / (Math.PI * 1.8 ** 2));
    expect(areaOn(raise(circle(0.5, 0, 0.3), 0.1).outline)).toBeCloseTo(areaOf(strip, whole) / tiles, 4);
  });
});
