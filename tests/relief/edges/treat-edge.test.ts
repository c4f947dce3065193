// Covers: src/design/pattern/edge.ts
import { Resvg } from "@resvg/resvg-js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { friezeGroup } from "../../../src/base/frieze/symmetry.js";
import { regionSchema } from "../../../src/design/pattern/region.js";
import { fromGrid, operatePath } from "../../../src/flat/grid.js";
import { clipAlong, ringArea } from "../../../src/flat/polygons.js";
import { completeArt } from "../../../src/relief/art.js";
import {
  areaOf,
  circle,
  collector,
  differenceArea,
  drawing,
  failureOf,
  region,
  type StripInput,
  stripOf,
} from "../../flat/strips.js";

function complete(spec: object, input: StripInput = {}) {
  const strip = stripOf(input);
  const { codes, warnings, warn } = collector();
  const art = completeArt(strip, region({ unit: "mm", ...spec }), "r", warn);
  const inside = clipAlong(art.region, 0, strip.grid.tile, 4 * strip.halfSeat);
  return { strip, art, codes, warnings, area: areaOf(strip, inside) };
}

const band = "M 0 -1 H 6 V 1 H 0 Z";
const square = "M 2 -1 H 4 V 1 H 2 Z";
const segment = (w: number, d: number) => {
  const r = (w * w) / (8 * d) + d / 2;
  return r * r * Math.acos((r - d) / r) - (r - d) * Math.sqrt(2 * r * d - d * d);
};

describe("edges along outlines", () => {
  // Both sides of a band 6 mm long: the number of lobes nearest to 6 / width each.
  it.each([
    ["scallop", 1, 6, segment(1, 0.3)],
    ["scallop", 0.93, 6, segment(1, 0.3)],
    ["wave", 1.1, 5, (1.2 * 0.3) / 2],
    ["teeth", 0.75, 8, (0.75 * 0.3) / 2],
    ["steps", 0.75, 8, (0.75 * 0.3) / 2],
  ] as const)(
    "%s %s mm wide come out even round the band, with their area on both sides",
    (form, width, count, lobe) => {
      const edge = { form, width, depth: 0.3 };
      const { area, codes } = complete({ path: band, edge });
      expect(Math.abs(area - 12 - 2 * count * lobe)).toBeLessThan(0.04);
      const bitten = complete({ path: band, edge: { ...edge, side: "in" } });
      expect(Math.abs(bitten.area - 12 + 2 * count * lobe)).toBeLessThan(0.04);
      expect([...codes, ...bitten.codes]).toEqual([]);
    },
  );

  it("begin and end at corners", () => {
    const { area, art } = complete({ path: square, edge: { form: "teeth", width: 0.52, depth: 0.2 } });
    expect(area).toBeCloseTo(4 + 4 * 4 * ((0.5 * 0.2) / 2), 3);
    const kept = (rings: typeof art.region) =>
      [2, 4]
        .flatMap((x) => [-1, 1].map((y) => [x * 1e6, y * 1e6]))
        .filter(([cx, cy]) => rings.flat().some(({ x, y }) => Math.hypot(x - cx, y - cy) < 1e4)).length;
    expect(kept(art.region)).toBe(4);
    // Without corners the lobes begin at one of them and pass over the others.
    const passed = complete({ path: square, edge: { form: "teeth", width: 0.6, depth: 0.2, cornerAngle: 120 } });
    expect(kept(passed.art.region)).toBe(1);
  });

  it("go round holes too, towards their middle", () => {
    const path = `${circle(3, 0, 2)} ${circle(3, 0, 1)}`;
    const { area } = complete({ path, fill: "evenodd", edge: { form: "teeth", width: 0.5, depth: 0.2 } });
    expect(area).toBeGreaterThan(3 * Math.PI + 0.8);
    expect(area).toBeLessThan(3 * Math.PI + 2.1);
  });

  it("cover what a rasteriser covers of the same lobes drawn as arcs", () => {
    const { art, strip, area } = complete(
      { path: square, edge: { form: "scallop", width: 0.5, depth: 0.2 } },
      { tolerance: 0.002 },
    );
    const r = (0.5 * 0.5) / (8 * 0.2) + 0.1;
    const arcs = [
      [2, -1, 1, 0],
      [4, -1, 0, 1],
      [4, 1, -1, 0],
      [2, 1, 0, -1],
    ].flatMap(([x, y, dx, dy]) => [1, 2, 3, 4].map((k) => `A ${r} ${r} 0 0 1 ${x + 0.5 * k * dx} ${y + 0.5 * k * dy}`));
    const reference = painted(`M 2 -1 ${arcs.join(" ")} Z`);
    const rings = art.region
      .map((ring) => fromGrid(strip.grid, ring))
      .filter((ring) => ring.every(([u]) => u > 0 && u < 6));
    const own = painted(rings.map((ring) => `M ${ring.map((point) => point.join(" ")).join(" L ")} Z`).join(" "));
    let apart = 0;
    for (let i = 0; i < own.length; i++) apart += Math.abs(own[i] - reference[i]) / 255;
    expect(apart / ZOOM ** 2 / area).toBeLessThan(0.004);
  });

  it.each(["p1m1", "p2", "p2mm", "p11g", "p2mg", "p11m"] as const)("are as symmetric as %s", (symmetry) => {
    for (const spec of [
      { path: "M 0 0.9 C 0.5 1.4 1 0.5 1.5 0.9 S 2.4 1.3 3 0.9", ribbon: { width: 0.4 } },
      { path: circle(0, 0, 1.1) },
      { path: "M 0.4 0.5 L 1.2 1.7 L 1.3 0.4 Z" },
    ]) {
      const { strip, art } = complete({ ...spec, edge: { form: "scallop", width: 0.47, depth: 0.12 } }, { symmetry });
      const middle = (rings: typeof art.region) =>
        clipAlong(rings, -strip.grid.tile / 2, (3 * strip.grid.tile) / 2, 1e8);
      for (const operation of friezeGroup(symmetry).operations) {
        const image = art.region.map((ring) => {
          const turned = operatePath(strip.grid, ring, operation);
          return ringArea(turned) * ringArea(ring) < 0 ? turned.reverse() : turned;
        });
        expect(differenceArea(strip, middle(image), middle(art.region))).toBeLessThan(0.02);
      }
    }
  });

  it("are alike in every tile, whatever is drawn, or say why they cannot be", () => {
    fc.assert(
      fc.property(
        drawing,
        fc.constantFrom("p1", "p11g", "p1m1", "p2", "p11m", "p2mg", "p2mm"),
        fc.constantFrom("scallop", "wave", "teeth", "steps"),
        fc.constantFrom("out", "in"),
        fc.integer({ min: 20, max: 150 }),
        fc.integer({ min: 2, max: 50 }),
        (path, symmetry, form, side, width, depth) => {
          const edge = { form, side, width: width / 100, depth: depth / 100 };
          let made: ReturnType<typeof complete>;
          try {
            made = complete({ path, unit: "tile", edge }, { symmetry });
          } catch (error) {
            expect(error).toMatchObject({ code: "edge-too-deep", path: "r.edge.depth" });
            return;
          }
          const { strip, art } = made;
          const tile = (n: number) =>
            areaOf(strip, clipAlong(art.region, n * strip.grid.tile, (n + 1) * strip.grid.tile, 1e9));
          expect(Math.abs(tile(1) - tile(0))).toBeLessThan(2e-3);
        },
      ),
      { seed: 17, numRuns: 60 },
    );
  });
});

describe("an edge that does not fit", () => {
  it("names the largest depth, and it works", () => {
    const edge = { form: "scallop", width: 1, depth: 0.6 };
    const error = failureOf(() => complete({ path: band, edge }));
    expect([error.code, error.path, error.allowed]).toEqual(["edge-too-deep", "r.edge.depth", "at most 0.5 mm"]);
    expect(() => complete({ path: band, edge: { ...edge, depth: 0.5 } })).not.toThrow();
  });

  it("warns where lobes come out far from the wanted width", () => {
    const { codes, warnings } = complete({ path: square, edge: { form: "wave", width: 1.4, depth: 0.2 } });
    expect(codes).toEqual(["edge-uneven"]);
    expect(warnings[0].message).toMatch(/takes 1 of these lobes, each 2 mm wide instead of 1.4 mm/);
  });

  it("is refused before it stalls where lobes would be far too many", () => {
    const zigzag = Array.from({ length: 300 }, (_, i) => `L ${(0.01 * i).toFixed(2)} ${i % 2 === 0 ? 2 : -1.9}`).join(
      " ",
    );
    const path = `M 0 -2 ${zigzag} L 5.9 -2 Z`;
    const error = failureOf(() => complete({ path, edge: { form: "wave", width: 0.1, depth: 0.02 } }));
    expect([error.code, error.path]).toEqual(["edge-too-fine", "r.edge.width"]);
  });

  it.each([
    [{ edge: { form: "scallops", width: 1, depth: 0.1 } }, "edge.form"],
    [{ edge: { form: "wave", width: 0, depth: 0.1 } }, "edge.width"],
    [{ edge: { form: "wave", width: 1, depth: 0 } }, "edge.depth"],
    [{ edge: { form: "wave", width: 1, depth: 0.1 }, ribbon: { width: 1, weave: { lift: 0.2 } } }, "edge"],
  ])("is refused in the document: %o", (spec, path) => {
    const { error } = regionSchema.safeParse({ path: "M 0 0 H 1", height: 0.5, ...spec });
    expect(error?.issues.map((issue) => issue.path.join("."))).toContain(path);
  });
});

const ZOOM = 200;

/** Cover of each pixel of path data in mm over a tile, by resvg; y down in both. */
function painted(data: string): Uint8Array {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 -3 6 6" width="${6 * ZOOM}" height="${6 * ZOOM}"><path d="${data}"/></svg>`;
  return new Resvg(svg).render().pixels.filter((_, i) => i % 4 === 3);
}
