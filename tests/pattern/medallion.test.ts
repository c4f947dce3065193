// Covers: src/pattern/spans.ts
import { describe, expect, it } from "vitest";
import { solveFit } from "../../src/band/fit/fit.js";
import { polygonArea } from "../../src/base/math/polygon.js";
import { fitSchema } from "../../src/design/pattern/fit.js";
import { patternSchema } from "../../src/design/pattern/pattern.js";
import { spansOf } from "../../src/pattern/spans.js";
import { build } from "../../src/ring/build.js";
import { flatTile } from "../../src/ring/flat-tile.js";
import { circle, failureOf, fitOf } from "../flat/strips.js";

const BAND = {
  annulet: 1,
  tolerance: 0.03,
  size: { diameter: 17 },
  profile: { width: 6.2, thickness: 2, bore: { form: "flat" }, outside: { form: "flat", edge: 0.2 } },
};
const FIT = { repeats: 12, hold: "band", aspect: 1.2 };
const dot = { path: circle(0.5, 0.1, 0.2), height: 0.4 };

const ring = (pattern: unknown, more: object = {}) => build({ ...BAND, pattern, ...more });

describe("where a medallion lies", () => {
  it("is in the middle of the cover, with the tiles beside it", () => {
    const round = spansOf({ ...fitOf({ repeats: 9, tileWidth: 6 }), medallion: 2 });
    expect(round).toMatchObject({ starts: [33], fit: { repeats: 7 }, medallion: { start: 21 } });
    expect(round.medallion?.fit).toMatchObject({ tileWidth: 12, tileHeight: 6, aspect: 0.5, rows: 1, repeats: 1 });
    const stopped = spansOf({ ...fitOf({ repeats: 9, tileWidth: 6, cover: 200, rows: 2 }), medallion: 3 });
    expect(stopped).toMatchObject({ starts: [0, 36], fit: { repeats: 3 }, medallion: { start: 18 } });
    expect(stopped.medallion?.fit).toMatchObject({ tileWidth: 18, tileHeight: 12, aspect: 2 / 3 });
  });

  it("needs room, and a middle tile or border where the pattern stops", () => {
    const flat = () => ({ seatLength: 6, meanRadius: 9 });
    const solve = (repeats: number | "auto", medallion: number, cover: number) =>
      solveFit({ ...fitSchema.parse({ hold: "band", repeats }), medallion }, cover, 6, flat);
    expect(failureOf(() => solve(4, 4, 360))).toMatchObject({ code: "medallion-misfit", value: 4 });
    expect(failureOf(() => solve(9, 2, 200))).toMatchObject({ code: "medallion-misfit", allowed: "8 or 10" });
    expect(solve("auto", 2, 200).candidates.every(({ repeats }) => repeats % 2 === 0 && repeats > 2)).toBe(true);
    expect(solve("auto", 40, 360).repeats).toBe(41);
  });
});

describe("a ring with a medallion", () => {
  it("with the tiles' own art in it is the ring without one", async () => {
    // Outside reference: the same bodies, drawn by the tiles alone; the mesh's facets may differ with its symmetry.
    const { report: plain } = await ring({ fit: FIT, regions: [dot] }, { tolerance: 0.004 });
    const { report } = await ring(
      { fit: FIT, regions: [dot], medallion: { tiles: 1, regions: [dot] } },
      { tolerance: 0.004 },
    );
    expect(report).toMatchObject({ closed: true, genus: 1, components: 1 });
    expect(Math.abs(report.volume / plain.volume - 1)).toBeLessThan(1e-4);
    expect(report.fit).toMatchObject({ repeats: 12, medallion: 1 });
  });

  it("stands at the top, and the tiles that it takes the place of are gone, beads too", async () => {
    for (const cover of [360, 240]) {
      const beaded = { ...dot, ribbon: { width: 0.5 }, beads: { diameter: 0.4, count: 6 } };
      const hole = { path: circle(0.5, 0, 0.1), mode: "pierced" };
      const { report, mesh } = await ring({
        fit: FIT,
        cover,
        regions: [beaded],
        medallion: { tiles: 2, regions: [hole, { ...dot, height: 0.9, path: circle(0.5, 0.2, 0.05) }] },
      });
      expect(report).toMatchObject({ closed: true, genus: 2, genusExpected: 2 });
      expect(report.beads.map(({ count }) => count)).toEqual([60]);
      let [top, place] = [0, [0, 0]];
      for (let i = 0; i < mesh.positions.length; i += 3) {
        const r = Math.hypot(mesh.positions[i], mesh.positions[i + 1]);
        if (r > top) [top, place] = [r, [mesh.positions[i], mesh.positions[i + 1]]];
      }
      // The tallest body is the medallion's, at θ = 90°.
      expect(Math.abs(place[0])).toBeLessThan(0.6);
      expect(place[1]).toBeGreaterThan(0);
    }
  });

  it("is drawn by itself, and the tiles begin beside it", async () => {
    const pattern = {
      fit: FIT,
      regions: [dot],
      medallion: { tiles: 3, regions: [{ ...dot, path: circle(0.5, 0, 0.1) }] },
    };
    const medallion = await flatTile({ ...BAND, tolerance: 0.002, pattern }, { part: "medallion" });
    const tile = await flatTile({ ...BAND, tolerance: 0.002, pattern });
    expect(medallion.fit.tileWidth).toBeCloseTo(3 * tile.fit.tileWidth, 12);
    const areaOf = ({ regions }: typeof tile) =>
      regions.flatMap(({ rings }) => rings).reduce((sum, r) => sum + polygonArea(r), 0);
    // A circle of 0.1 of three tiles, across stretched by the fit.
    const width = medallion.fit.tileWidth;
    expect(areaOf(medallion) / (Math.PI * 0.01 * width ** 2 * tile.fit.stretch)).toBeCloseTo(1, 2);
    expect(areaOf(tile) / (Math.PI * 0.04 * tile.fit.tileWidth ** 2 * tile.fit.stretch)).toBeCloseTo(1, 2);
    await expect(flatTile({ ...BAND, pattern }, { tiles: 10 })).rejects.toMatchObject({ code: "tiles-out-of-range" });
    await expect(flatTile({ ...BAND, pattern }, { part: "ornament" })).rejects.toMatchObject({ code: "no-such-part" });
  });

  it("refuses art beyond its sides", async () => {
    const wide = { path: "M 0 0 H 2.5 V 0.1 Z", height: 0.3 };
    await expect(ring({ fit: FIT, medallion: { tiles: 1, regions: [wide] } })).rejects.toMatchObject({
      code: "path-outside-tile",
      path: "pattern.medallion.regions[0].path",
    });
    expect(patternSchema.safeParse({ medallion: { tiles: 0, regions: [] } }).success).toBe(false);
  });
});
