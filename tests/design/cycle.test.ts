// Covers: src/design/pattern/fit.ts, src/design/repeat-numbers.ts
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { solveFit } from "../../src/band/fit/fit.js";
import { friezeGroups } from "../../src/base/frieze/symmetry.js";
import { cycleLength, standsOn } from "../../src/design/cycle.js";
import { fitSchema } from "../../src/design/pattern/fit.js";
import { imagesOf } from "../../src/flat/strip.js";
import { completeArt } from "../../src/relief/art.js";
import { build } from "../../src/ring/build.js";
import { planBeads } from "../../src/ring/plan-beads.js";
import { areaOf, circle, collector, failureOf, region, SEED, stripOf } from "../flat/strips.js";

const BAND = {
  annulet: 1,
  tolerance: 0.03,
  size: { diameter: 17 },
  profile: { width: 6.2, thickness: 2, bore: { form: "flat" }, outside: { form: "flat", edge: 0.2 } },
};

const ring = (pattern: unknown, more: object = {}) => build({ ...BAND, pattern, ...more });

describe("which tiles carry art", () => {
  it("is read from a list and from every so many", () => {
    const tilesOf = (tiles: Parameters<typeof standsOn>[0], cycle: number) => {
      const on = standsOn(tiles, cycle, "tiles");
      return Array.from({ length: 12 }, (_, i) => i - 4).filter((tile) => on?.(tile));
    };
    expect(tilesOf([0], 2)).toEqual([-4, -2, 0, 2, 4, 6]);
    expect(tilesOf([1, 2], 4)).toEqual([-3, -2, 1, 2, 5, 6]);
    expect(tilesOf({ every: 3, from: 1 }, 6)).toEqual([-2, 1, 4, 7]);
    expect(standsOn(undefined, 3, "tiles")).toBeUndefined();
    expect([cycleLength("round", 11), cycleLength(3, 11)]).toEqual([11, 3]);
  });

  it("names the tile that the cycle does not have", () => {
    for (const tiles of [[2], [0, 7], { every: 1, from: 2 }]) {
      expect(failureOf(() => standsOn(tiles, 2, "there"))).toMatchObject({ code: "tile-not-in-cycle", path: "there" });
    }
  });
});

describe("the fit of a cycle", () => {
  const flat = () => ({ seatLength: 6, meanRadius: 9 });
  const asked = (spec: object) => ({ ...fitSchema.parse({ hold: "band", ...spec }) });

  it("offers whole cycles only, the nearest first", () => {
    for (const cycle of [2, 3, 5]) {
      const fit = solveFit({ ...asked({}), cycle }, 360, 6, flat);
      expect(fit.candidates.every(({ repeats }) => repeats % cycle === 0 && repeats > 0)).toBe(true);
      // 2π · 9 / 6 = 9.42 square tiles.
      expect(fit.repeats).toBe(cycle * Math.max(1, Math.round(9.42 / cycle)));
      expect(fit.cycle).toBe(cycle);
    }
    expect(solveFit({ ...asked({}), cycle: "round" }, 360, 6, flat)).toMatchObject({ repeats: 9, cycle: 9 });
  });

  it("refuses a number of repeats that is no whole number of cycles, but not where the pattern stops", () => {
    const error = failureOf(() => solveFit({ ...asked({ repeats: 9 }), cycle: 2 }, 360, 6, flat));
    expect(error).toMatchObject({ code: "cycle-misfit", path: "pattern.fit.repeats", value: 9 });
    expect(error.allowed).toBe("8 or 10");
    expect(solveFit({ ...asked({ repeats: 9 }), cycle: 2 }, 200, 6, flat).repeats).toBe(9);
  });
});

describe("art on some tiles", () => {
  it.each(friezeGroups.map(({ name }) => name))("keeps its images in its own tile in %s", (symmetry) => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 4 }), fc.double({ min: 0.06, max: 0.44, noNaN: true }), (cycle, x) => {
        const strip = stripOf({ symmetry, cycle, repeats: 12 });
        const dot = region({ path: circle(x, 0.25, 0.05), tiles: [0] });
        const { region: drawn } = completeArt(strip, dot, "dot", collector().warn);
        const tiles = drawn.map((path) => {
          const xs = path.map((point) => point.x / strip.grid.tile);
          return Math.floor((Math.min(...xs) + Math.max(...xs)) / 2 + 1e-6);
        });
        expect(tiles.every((tile) => tile % cycle === 0)).toBe(true);
        expect(tiles.filter((tile) => tile === 0)).toHaveLength(tiles.length / new Set(tiles).size);
      }),
      { seed: SEED, numRuns: 20 },
    );
  });

  it("is drawn as often as without a cycle, less the other tiles", () => {
    const strip = stripOf({ cycle: 3, symmetry: "p2mm" });
    const paths = [
      [
        { x: 0, y: 0 },
        { x: strip.grid.tile / 8, y: 10 },
      ],
    ];
    const all = imagesOf(strip, paths).length;
    const parts = [0, 1, 2].map((n) => imagesOf(strip, paths, { on: standsOn([n], 3, "tiles") }).length);
    expect(parts.reduce((sum, part) => sum + part, 0)).toBeGreaterThanOrEqual(all - 4);
    expect(areaOf(strip, [])).toBe(0);
  });
});

describe("rings whose tiles vary", () => {
  // Outside reference: the same art without a cycle, whose volume is held to closed forms elsewhere.
  const blob = { path: "M 0.2 0.1 L 0.42 0.3 L 0.4 0.06 Z", height: 0.4, round: 0.06 };

  it.each(["p1", "p1m1", "p2mm", "p2mg", "p2"])(
    "A B A B with A = B is the ring without a cycle, in %s",
    async (symmetry) => {
      const fit = { repeats: 10, hold: "band" };
      const { report: plain } = await ring({ fit, symmetry, regions: [blob] });
      const { report: twice } = await ring({
        fit,
        symmetry,
        cycle: 2,
        regions: [
          { ...blob, tiles: [0] },
          { ...blob, tiles: [1] },
        ],
      });
      expect(twice).toMatchObject({ closed: true, genus: 1, components: 1 });
      // Mirrored tiles are made of one half and its image, and here the halves differ: as far as flattened art does.
      const mirrored = symmetry === "p1m1" || symmetry.startsWith("p2m");
      expect(Math.abs(twice.volume / plain.volume - 1)).toBeLessThan(mirrored ? 1e-4 : 1e-6);
      expect(twice.fit).toMatchObject({ repeats: 10, cycle: 2 });
    },
  );

  it("adds up: A and B by turns raise half of what each raises alone", async () => {
    const fit = { repeats: 12, hold: "band" };
    const bar = { path: "M 0.1 -0.3 H 0.9 V -0.1 H 0.1 Z", height: 0.3 };
    const volumeOf = async (cycle: number | "round", regions: unknown[]) =>
      (await ring({ fit, cycle, regions }, { tolerance: 0.003 })).report.volume;
    const none = await volumeOf(1, []);
    const [a, b] = [await volumeOf(1, [blob]), await volumeOf(1, [bar])];
    const both = await volumeOf(2, [
      { ...blob, tiles: [1] },
      { ...bar, tiles: [0] },
    ]);
    expect((both - none) / ((a - none + (b - none)) / 2)).toBeCloseTo(1, 2);
    // One tile raises so little that the facets of the band, other ones in each ring, show.
    const one = await volumeOf("round", [{ ...blob, tiles: [5] }]);
    expect((one - none) / ((a - none) / 12)).toBeCloseTo(1, 1);
  });

  it("counts holes and beads by what stands on each tile", async () => {
    const fit = { repeats: 6, hold: "band" };
    const regions = [
      { path: circle(0.5, 0, 0.12), mode: "pierced", tiles: [1] },
      {
        path: circle(0.5, 0, 0.3),
        ribbon: { width: 0.6, side: "centre" },
        height: 0.3,
        tiles: [0, 2],
        beads: { diameter: 0.5, count: 8 },
      },
    ];
    const { report } = await ring({ fit, cycle: 3, regions });
    expect(report).toMatchObject({ closed: true, genus: 3, genusExpected: 3 });
    expect(report.beads.map(({ count }) => count)).toEqual([32]);
  });

  it("gives a strand on every tile the beads that it has without a cycle, and shared beads once", async () => {
    const fit = { repeats: 8, hold: "band" };
    const strand = { along: { path: "M 0 0.2 Q 0.5 0 1 0.2" }, diameter: 0.5, pitch: 1.1 };
    const cross = (tiles?: number[]) => ({ along: { path: "M 0.5 -0.3 V 0.4", tiles }, diameter: 0.5, pitch: 1.1 });
    const plan = (cycle: number, beads: unknown[]) => planBeads({ ...BAND, pattern: { fit, cycle }, beads });
    const [one] = await plan(1, [strand]);
    expect((await plan(2, [strand]))[0]).toEqual(one);
    const shared = (run: object) => ({ ...run, junctions: "share" });
    const [all, crossed] = await plan(1, [shared(strand), shared(cross())]);
    const [half, crossedHalf] = await plan(2, [shared(strand), shared(cross([0]))]);
    expect(crossedHalf.count * 2).toBe(crossed.count);
    expect(half.count).toBeGreaterThanOrEqual(Math.min(one.count, all.count) - 4);
    const { report } = await build({
      ...BAND,
      pattern: { fit, cycle: 2 },
      beads: [shared(strand), shared(cross([1]))],
    });
    expect(report.warnings.map(({ code }) => code)).not.toContain("beads-crowded");
    expect(report.closed).toBe(true);
  });

  it("refuses tiles that are not there, wherever they are named", async () => {
    const failure = (pattern: object, beads: unknown[] = []) =>
      build({ ...BAND, pattern, beads }).then(
        () => undefined,
        (error: unknown) => error,
      );
    expect(await failure({ regions: [{ ...blob, tiles: [1] }] })).toMatchObject({
      code: "tile-not-in-cycle",
      path: "pattern.regions[0].tiles",
    });
    const along = { path: "M 0 0 H 1", tiles: [4] };
    expect(await failure({ cycle: 4 }, [{ along, diameter: 0.5 }])).toMatchObject({
      code: "tile-not-in-cycle",
      path: "beads[0].along.tiles",
    });
  });
});
