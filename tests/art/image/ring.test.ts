// Covers: src/design/art/image-map.ts, src/design/art/height-rules.ts
/** Height maps from the document to the ring. */
import { build, flatTile, readDesign } from "annulet";
import { describe, expect, it } from "vitest";
import { polygonArea } from "../../../src/base/math/polygon.js";
import { failureOf } from "../../flat/strips.js";
import { greyPng } from "./pngs.js";

type Fields = Readonly<Record<string, unknown>>;

const wave = greyPng(120, 100, (x, y) => 0.5 + 0.25 * (Math.sin(2 * Math.PI * x) + Math.cos(2 * Math.PI * y)));
/** Spots on black, one of them across the seam, on nothing. */
const spots = greyPng(120, 100, (x, y) =>
  Math.max(0, 1 - 5 * Math.hypot(x - 0.5, y - 0.4), 1 - 6 * Math.hypot(Math.min(x, 1 - x), y - 0.7)),
);

const CHANNEL = { form: "channel", rail: 0.8, depth: 0.6, edge: 0.15 };
const DOMED = { form: "domed", rise: 0.4, edge: 0.3 };

const design = (region: Fields, pattern: Fields = {}, outside: Fields = CHANNEL) => ({
  annulet: 1,
  size: { diameter: 18 },
  tolerance: 0.03,
  profile: { width: 7, thickness: 2.4, bore: { form: "flat" }, outside },
  pattern: { fit: { repeats: 9, hold: "band" }, regions: [{ image: "a.png", height: 0.5, ...region }], ...pattern },
});

const sunk = { mode: "sunk", height: undefined, depth: 0.4 };

describe("rings with a height map are closed", () => {
  it.each([
    ["between rails", design({}), wave],
    ["on a dome", design({}, {}, DOMED), wave],
    ["sunk into a dome", design(sunk, {}, DOMED), wave],
    ["sunk in the floor of a channel", design({ ...sunk, map: { invert: true, base: 0.1 } }), wave],
    ["with nothing between its spots", design({}), spots],
    ["with spots under every mirror", design({}, { symmetry: "p2mm" }, DOMED), spots],
    ["sunk spots in p2mg", design({ ...sunk, map: { invert: true } }, { symmetry: "p2mg" }), spots],
    ["over a part of the band", design({}, { cover: 200 }, DOMED), wave],
    ["in two rows", design({}, { fit: { repeats: 12, rows: 2, hold: "band" } }), wave],
    ["once round", design({ map: { over: "band", base: 0.1 } }), wave],
    ["once over a part, upright at its ends", design({ map: { over: "band", edge: 0 } }, { cover: 200 }, DOMED), wave],
    ["on every third tile", design({ tiles: [1] }, { fit: { repeats: 9, hold: "band" }, cycle: 3 }), wave],
    [
      "in a medallion, under fading ends",
      design(
        {},
        {
          fit: { repeats: 11, hold: "band" },
          cover: 300,
          ends: { form: "fade", length: 4 },
          medallion: { tiles: 3, regions: [{ image: "a.png", height: 0.6 }] },
        },
      ),
      wave,
    ],
    [
      "in ornaments at its ends, one of them mirrored",
      design(
        { image: undefined, path: "M 0.3 0 L 0.7 0 L 0.5 0.2 Z" },
        {
          cover: 200,
          ends: { form: "ornament", tiles: 1, regions: [{ image: "a.png", height: 0.6 }] },
        },
      ),
      wave,
    ],
    [
      "cut by what comes after it",
      design(
        { map: { base: 0.1 } },
        {
          regions: [
            { image: "a.png", height: 0.4, map: { base: 0.1 } },
            { path: "M 0.4 0 A 0.1 0.1 0 0 0 0.6 0 A 0.1 0.1 0 0 0 0.4 0 Z", mode: "sunk", depth: 0.3 },
          ],
        },
      ),
      wave,
    ],
  ])("%s", async (_, document, image) => {
    const { report } = await build(document, { files: { "a.png": image } });
    expect(report).toMatchObject({ closed: true, components: 1, genus: 1 });
  });
});

it("adds the volume of the wave, bent round: ∫∫ (h + h² / 2R) du dv", async () => {
  // On a floor of radius R, a height h over du dv adds ((R + h)² − R²) / 2R. The mean of (sin + cos)² is 1.
  const fine = { ...design({ map: { base: 0.1, smooth: 0 } }), tolerance: 0.003 };
  const plain = await build({ ...fine, pattern: { ...fine.pattern, regions: [] } });
  const ring = await build(fine, { files: { "a.png": wave } });
  const R = ring.report.fit?.referenceRadius ?? Number.NaN;
  const mean = 0.1 + 0.25;
  const square = mean ** 2 + 0.125 ** 2;
  const seat = (ring.report.fit?.tileHeight ?? Number.NaN) * 2 * Math.PI * R;
  const added = ring.report.volume - plain.report.volume;
  // What is left is the facets' of the two bands, which shrinks with the tolerance.
  expect(Math.abs(added / (seat * (mean + square / (2 * R))) - 1)).toBeLessThan(4e-3);
});

it("is drawn on the tile as what reaches each of several heights", async () => {
  const tile = await flatTile(design({ name: "dune" }), { files: { "a.png": wave } });
  const heights = tile.regions.map(({ height }) => height ?? 0);
  expect(heights).toHaveLength(5);
  expect(heights).toEqual([...heights].sort((a, b) => a - b));
  const areas = tile.regions.map(({ rings }) => rings.reduce((sum, ring) => sum + polygonArea(ring), 0));
  for (let i = 1; i < areas.length; i++) expect(areas[i]).toBeLessThan(areas[i - 1]);
  // Half of the wave is above its mean, and the heights stand evenly about it.
  const middle = (areas[2] + areas[3]) / 2;
  expect(middle / (tile.fit.tileWidth * tile.seatLength)).toBeCloseTo(0.5, 1);
  const depths = await flatTile(design({ ...sunk }), { files: { "a.png": wave } });
  expect(depths.regions.every(({ mode, height }) => mode === "sunk" && (height ?? 0) < 0)).toBe(true);
});

describe("the document", () => {
  const problems = (region: Fields) =>
    failureOf(() => readDesign(design(region))).problems.map(({ code, path }) => `${code} ${path?.split("].")[1]}`);

  it("wants nothing beside an image that belongs to outlines, and no map without one", () => {
    expect(problems({ path: "M 0 0 L 1 0" })).toEqual(["value-invalid image"]);
    expect(problems({ height: undefined })).toEqual(["value-missing height"]);
    expect(problems({ mode: "pierced", height: undefined })).toEqual(["value-invalid mode"]);
    expect(problems({ round: 0.1 })).toEqual(["value-invalid round"]);
    expect(problems({ ribbon: { width: 1 } })).toEqual(["value-invalid ribbon"]);
    expect(problems({ beads: { diameter: 0.4 } })).toEqual(["value-invalid beads"]);
    expect(problems({ offset: 0.1, within: ["b"] })).toEqual(["value-invalid offset", "value-invalid within"]);
    expect(problems({ tiles: [0], map: { over: "band" } })).toEqual(["value-invalid tiles"]);
    expect(problems({ image: undefined, path: "M 0 0 L 1 0 L 0 1 Z", map: {} })).toEqual(["value-invalid map"]);
    expect(problems({ map: { seam: "blend" } })).toEqual(["value-invalid map.seam"]);
    expect(problems({ map: { smoth: 1 } })).toEqual(["unknown-key map.smoth"]);
  });
});

it("is no outline for others", async () => {
  const regions = [
    { name: "dune", image: "a.png", height: 0.4 },
    { path: "M 0.1 0 L 0.5 0 L 0.3 0.2 Z", height: 0.3, within: ["dune"] },
  ];
  const built = build(design({}, { regions }), { files: { "a.png": wave } });
  await expect(built).rejects.toMatchObject({ code: "region-without-outline", path: "pattern.regions[1].within[0]" });
});

it("leaves the least wall beneath what is sunk", async () => {
  const deep = build(design({ ...sunk, depth: 3 }), { files: { "a.png": wave } });
  await expect(deep).rejects.toMatchObject({ code: "depth-too-large" });
});
