// Covers: src/band/fit/fit-lanes.ts, src/design/composition-rules.ts
// Covers: src/design/pattern/lane-name.ts
import { describe, expect, it } from "vitest";
import { solveLanes } from "../../src/band/fit/fit-lanes.js";
import { polygonArea } from "../../src/base/math/polygon.js";
import { fitSchema } from "../../src/design/pattern/fit.js";
import { patternSchema } from "../../src/design/pattern/pattern.js";
import { build } from "../../src/ring/build.js";
import { fitDesign } from "../../src/ring/fit-design.js";
import { flatTile } from "../../src/ring/flat-tile.js";
import { planBeads } from "../../src/ring/plan-beads.js";
import { circle, failureOf } from "../flat/strips.js";

const BAND = {
  annulet: 1,
  tolerance: 0.03,
  size: { diameter: 17 },
  profile: { width: 8, thickness: 2, bore: { form: "flat" }, outside: { form: "flat", edge: 0.2 } },
};
const dot = { path: circle(0.5, 0.1, 0.2), height: 0.4 };
const ring = (pattern: object, more: object = {}) => build({ ...BAND, pattern, ...more });

/** A flat band: its seat is as long as it is wide. */
const flat = (width: number) => ({ seatLength: width, meanRadius: 9 });
const ask = (name: string, spec: object, share = 1) => ({
  ...fitSchema.parse(spec),
  name,
  share,
  path: `lane ${name}`,
});

describe("the fit of lanes", () => {
  it("makes every lane's tiles true on one band: Σ rows · aspect · C / N + gaps = seat", () => {
    const lanes = [ask("a", { repeats: 24, aspect: 0.5 }), ask("b", { aspect: 1.2, rows: 2 }, 4), ask("c", {}, 1.5)];
    const fit = solveLanes(lanes, { cover: 360, gap: 0.4, drawnWidth: 9 }, flat);
    const around = 2 * Math.PI * 9;
    const heights = fit.lanes.map(({ rows, aspect, repeats }) => (rows * aspect * around) / repeats);
    expect(fit.bandWidth).toBeCloseTo(
      heights.reduce((sum, height) => sum + height, 0.8),
      8,
    );
    fit.lanes.forEach(({ height, tileWidth, tileHeight, aspect, stretch }, i) => {
      expect(height).toBeCloseTo(heights[i], 8);
      expect(tileHeight / tileWidth).toBeCloseTo(aspect, 8);
      expect(stretch).toBe(1);
    });
    // From edge to edge, with the gaps between.
    const [a, b, c] = fit.lanes;
    expect(a.v - a.height / 2).toBeCloseTo(-fit.bandWidth / 2, 9);
    expect(b.v - b.height / 2 - (a.v + a.height / 2)).toBeCloseTo(0.4, 9);
    expect(c.v + c.height / 2).toBeCloseTo(fit.bandWidth / 2, 9);
    expect(fit).toMatchObject({ repeats: 24, tileWidth: a.tileWidth });
  });

  it("keeps the shares where the band is held", () => {
    const lanes = [ask("a", { hold: "band" }), ask("b", { hold: "band" }, 3)];
    const { lanes: fitted, bandWidth } = solveLanes(lanes, { cover: 360, gap: 1, drawnWidth: 9 }, flat);
    expect(bandWidth).toBe(9);
    expect(fitted.map(({ height }) => height)).toEqual([2, 6]);
    // 2π · 9 / 2 and / 6 square tiles.
    expect(fitted.map(({ repeats }) => repeats)).toEqual([28, 9]);
    for (const { height, tileWidth, stretch } of fitted) expect(stretch).toBeCloseTo(height / tileWidth, 9);
  });

  it("takes two like lanes for two rows", () => {
    for (const outside of [
      { form: "channel", rail: 0.8, depth: 0.5 },
      { form: "domed", rise: 0.4, edge: 0.3 },
    ]) {
      const band = { ...BAND, profile: { ...BAND.profile, outside } };
      const rows = fitDesign({ ...band, pattern: { fit: { rows: 2, aspect: 1.1 } } });
      const lane = { fit: { aspect: 1.1 } };
      const lanes = fitDesign({ ...band, pattern: { gap: 0, lanes: [lane, lane] } });
      for (const { repeats, tileWidth, bandWidth } of lanes.lanes) {
        expect(repeats).toBe(rows.repeats);
        expect(tileWidth).toBeCloseTo(rows.tileWidth, 7);
        expect(bandWidth).toBeCloseTo(rows.bandWidth, 7);
      }
    }
  });

  it("refuses gaps without lanes between them, and repeats that no band gives, naming the lane", () => {
    const solve = (a: object, gap: number) => () =>
      solveLanes([ask("a", a), ask("b", {})], { cover: 360, gap, drawnWidth: 6 }, flat);
    expect(failureOf(solve({}, 6))).toMatchObject({ code: "gaps-too-wide", path: "pattern.gap" });
    expect(failureOf(solve({ repeats: 1, aspect: 2 }, 0.3)).code).toBe("fit-impossible");
    const odd = { ...ask("a", { repeats: 9 }), cycle: 2 };
    expect(failureOf(() => solveLanes([odd, ask("b", {})], { cover: 360, gap: 1, drawnWidth: 6 }, flat))).toMatchObject(
      {
        code: "cycle-misfit",
        path: "lane a.fit.repeats",
      },
    );
  });
});

describe("a ring with lanes", () => {
  it("of two like lanes is the ring of two rows", async () => {
    // Outside reference: rows, whose volume is held to closed forms elsewhere.
    const regions = [dot, { path: "M 0.1 -0.3 H 0.9 V -0.15 H 0.1 Z", height: 0.3 }];
    const rows = await ring({ fit: { rows: 2 }, regions });
    const lanes = await ring({ gap: 0, lanes: [{ regions }, { regions }] });
    expect(lanes.report).toMatchObject({ closed: true, genus: 1, components: 1 });
    expect(Math.abs(lanes.report.volume / rows.report.volume - 1)).toBeLessThan(1e-6);
    expect(lanes.report.fit?.lanes).toHaveLength(2);
  });

  it("repeats each lane by its own number, with holes, beads, cycles and medallions of its own", async () => {
    const lanes = [
      {
        name: "low",
        fit: { repeats: 20 },
        cycle: 2,
        regions: [
          { ...dot, tiles: [1] },
          { path: circle(0.5, 0, 0.2), mode: "pierced", tiles: [0] },
        ],
      },
      {
        name: "high",
        fit: { repeats: 9, aspect: 0.8 },
        regions: [{ ...dot, ribbon: { width: 0.5 }, beads: { diameter: 0.4, count: 5 } }],
        medallion: { tiles: 2, regions: [{ path: circle(0.5, 0, 0.1), height: 0.4 }] },
        ends: { form: "line", width: 0.5, height: 0.3 },
      },
    ];
    const beads = [
      { along: { path: "M 0.2 0.35 H 0.4", lane: "high" }, diameter: 0.3, pitch: 1.2 },
      { along: { path: "M 0.5 0.4 h 0.01" }, diameter: 0.3, count: 1 },
    ];
    const { report } = await ring({ gap: 0.5, lanes }, { beads });
    expect(report).toMatchObject({ closed: true, components: 1, genus: 11, genusExpected: 11 });
    expect(report.fit?.lanes.map(({ name, repeats }) => [name, repeats])).toEqual([
      ["low", 20],
      ["high", 9],
    ]);
    const counts = new Map(report.beads.map(({ run, count }) => [run, count]));
    expect(counts.get("high region 1")).toBe(35);
    expect((counts.get("path 1") ?? 0) % 7).toBe(0);
    expect(counts.get("path 2")).toBe(20);
  });

  it("lies where the fit says: the volume of each lane by Pappus", async () => {
    // A ring of full tiles raised by h over a lane: h · (1 + h / 2R) · C · height, C at the seat's radius.
    const full = { path: "M 0 -0.5 H 1 V 0.5 H 0 Z", height: 0.5 };
    const lane = (regions: unknown[]) => ({ fit: { repeats: 12 }, regions, share: 1 });
    const fine = { tolerance: 0.002 };
    const none = (await ring({ fit: { hold: "band" }, lanes: [lane([]), lane([])], gap: 1 }, fine)).report;
    const { report } = await ring({ fit: { hold: "band" }, lanes: [lane([full]), lane([])], gap: 1 }, fine);
    const { referenceRadius: R = Number.NaN, lanes = [] } = report.fit ?? {};
    // The tile of aspect 1 is stretched to the lane's height.
    const expected = 0.5 * (1 + 0.5 / (2 * R)) * 2 * Math.PI * R * lanes[0].height;
    expect((report.volume - none.volume) / expected).toBeCloseTo(1, 2);
    expect(report.centroid[2]).toBeLessThan(0);
  });

  it("draws one lane at a time", async () => {
    const pattern = {
      lanes: [
        { name: "low", regions: [dot] },
        { name: "high", share: 2, regions: [{ ...dot, path: circle(0.5, 0, 0.3) }] },
      ],
    };
    for (const [name, radius] of [
      ["low", 0.2],
      ["high", 0.3],
    ] as const) {
      const tile = await flatTile({ ...BAND, tolerance: 0.002, pattern }, { lane: name });
      const area = tile.regions.flatMap(({ rings }) => rings).reduce((sum, one) => sum + polygonArea(one), 0);
      expect(area / (Math.PI * radius ** 2 * tile.fit.tileWidth ** 2)).toBeCloseTo(1, 2);
      expect(tile.seatLength).toBeCloseTo(tile.fit.tileHeight, 9);
      expect(tile.lane).toBe(name);
    }
    await expect(flatTile({ ...BAND, pattern }, { lane: "none" })).rejects.toMatchObject({ code: "no-such-lane" });
  });

  it("refuses bodies that meet between lanes, lanes that are not there, and art beside lanes", async () => {
    const full = { path: "M 0.1 -0.5 H 0.9 V 0.5 H 0.1 Z", height: 0.5 };
    await expect(ring({ gap: 0, lanes: [{ regions: [full] }, { regions: [full] }] })).rejects.toMatchObject({
      code: "lanes-touch",
    });
    const beads = [{ along: { path: "M 0 0 H 1", lane: "none" }, diameter: 0.4 }];
    await expect(planBeads({ ...BAND, pattern: { lanes: [{}, {}] }, beads })).rejects.toMatchObject({
      code: "no-such-lane",
      path: "beads[0].along.lane",
    });
    const issues = patternSchema.safeParse({
      lanes: [{ name: "a" }, { name: "a" }],
      regions: [dot],
      symmetry: "p2",
      fit: { rows: 2 },
    });
    expect(issues.error?.issues.map(({ path }) => path.join("."))).toEqual([
      "lanes.1.name",
      "regions",
      "symmetry",
      "fit.rows",
    ]);
    expect(patternSchema.safeParse({ lanes: [{}, { ends: { form: "fade", length: 2 } }] }).success).toBe(false);
  });
});
