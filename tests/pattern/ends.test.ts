import { describe, expect, it } from "vitest";
import { patternSchema } from "../../src/design/pattern/pattern.js";
import { build } from "../../src/ring/build.js";
import { planBeads } from "../../src/ring/plan-beads.js";
import { circle } from "../flat/strips.js";
import { bodiesOf } from "../support/stages.js";

const BAND = {
  annulet: 1,
  tolerance: 0.01,
  size: { diameter: 17 },
  profile: { width: 6, thickness: 2, bore: { form: "flat" }, outside: { form: "flat", edge: 0.2 } },
};
const FIT = { repeats: 8, hold: "band" };
const bar = { path: "M 0 -0.2 H 1 V 0.2 H 0 Z", height: 0.5, unit: "tile" };
const COVER = 200;

const ring = (pattern: object, more: object = {}) =>
  build({ ...BAND, pattern: { fit: FIT, cover: COVER, ...pattern }, ...more });

describe("ends of a pattern that stops", () => {
  it("closes with every form, the plain zone's and the medallion's", async () => {
    const forms = [
      { form: "cut" },
      { form: "line", width: 0.8, height: 0.5, round: 0.1 },
      { form: "line", width: 0.6, height: 0.3 },
      { form: "fade", length: 5 },
      {
        form: "ornament",
        regions: [{ path: circle(0.5, 0.1, 0.2), height: 0.4, beads: { diameter: 0.3, pitch: 1.5, on: 0.3 } }],
      },
    ];
    const regions = [
      bar,
      { path: circle(0.5, 0.4, 0.08), mode: "pierced" },
      { path: circle(0.2, 0.35, 0.1), mode: "sunk", depth: 0.3 },
    ];
    for (const ends of forms) {
      for (const medallion of [undefined, { tiles: 2, regions: [{ path: circle(0.5, 0, 0.15), height: 0.4 }] }]) {
        const holes = medallion === undefined ? 8 : 6;
        const { report } = await ring({ regions, ends, medallion }, { tolerance: 0.03 });
        expect(report, JSON.stringify(ends)).toMatchObject({ closed: true, components: 1, genus: 1 + holes });
      }
    }
  });

  it("stops with a line of the volume that Pappus gives", async () => {
    // A box of w · h over the seat from edge to edge: volume = w · (h + h² / 2R) · seat, twice; the tiles are empty.
    const none = (await ring({ ends: { form: "cut" } })).report;
    const { report } = await ring({ ends: { form: "line", width: 1, height: 0.4 } });
    const { referenceRadius: R } = report.fit ?? { referenceRadius: Number.NaN };
    const seat = 6 - 2 * 0.2;
    const expected = 2 * 1 * seat * (0.4 + 0.4 ** 2 / (2 * R));
    expect((report.volume - none.volume) / expected).toBeGreaterThan(0.9);
    expect((report.volume - none.volume) / expected).toBeLessThan(1.1);
  });

  it("fades as 3t² − 2t³, less the dip below the seat", () => {
    const length = 6;
    const bodies = (ends: object) => bodiesOf({ ...BAND, pattern: { fit: FIT, cover: COVER, regions: [bar], ends } });
    const { parts, wrap, fit } = bodies({ form: "fade", length });
    const end = 8 * (fit?.tileWidth ?? 0);
    let checked = 0;
    for (const { positions } of parts.reliefs) {
      for (let i = 0; i < positions.length; i += 3) {
        const [u, , h] = wrap.inverse(positions[i], positions[i + 1], positions[i + 2]);
        const t = Math.min(1, Math.max(0, Math.min(u > end + 1 ? 0 : u, end - u) / length));
        const share = t * t * (3 - 2 * t);
        const dip = 0.025;
        const above = h - (0.5 * share - dip * (1 - share));
        expect(above).toBeLessThan(0.01);
        // The rest are vertices of the walls.
        if (above > -0.01) checked++;
      }
    }
    expect(checked).toBeGreaterThan(50);
  });

  it("keeps beads clear of lines and fades", async () => {
    const run = { along: { path: "M 0 0 H 1" }, diameter: 0.4, pitch: 1 };
    const countOf = async (ends: object) => {
      const [{ count }] = await planBeads({ ...BAND, pattern: { fit: FIT, cover: COVER, ends }, beads: [run] });
      return count;
    };
    const all = await countOf({ form: "cut" });
    expect(all - (await countOf({ form: "line", width: 1, height: 0.4 }))).toBeCloseTo((2 * (1 + 0.24)) / 0.4, -0.5);
    expect(all - (await countOf({ form: "fade", length: 4 }))).toBeGreaterThan(19);
  });

  it("mirrors the ornament of the far end", async () => {
    const regions = [{ path: "M 0.1 0.1 L 0.9 0.2 L 0.2 0.4 Z", height: 0.4 }];
    const { report } = await ring({ ends: { form: "ornament", regions } });
    expect(report).toMatchObject({ closed: true, genus: 1 });
    expect(report.centroid[0]).toBeCloseTo(0, 4);
  });

  it("refuses ends where there are none, too long ones, and ornaments without room", async () => {
    const accepted = (pattern: object) => patternSchema.safeParse(pattern).success;
    expect(accepted({ ends: { form: "fade", length: 3 } })).toBe(false);
    expect(accepted({ ends: { form: "cut" } })).toBe(true);
    expect(accepted({ medallion: { tiles: 1, regions: [] }, ends: { form: "fade", length: 3 } })).toBe(true);
    expect(accepted({ medallion: { tiles: 1, regions: [] }, ends: { form: "ornament", regions: [] } })).toBe(false);
    await expect(ring({ regions: [bar], ends: { form: "fade", length: 40 } })).rejects.toMatchObject({
      code: "ends-too-long",
    });
    await expect(ring({ ends: { form: "line", width: 10, height: 0.3 }, cover: 60 })).rejects.toMatchObject({
      code: "ends-too-long",
    });
    await expect(ring({ ends: { form: "ornament", tiles: 5, regions: [] } })).rejects.toMatchObject({
      code: "ornament-misfit",
      path: "pattern.ends.tiles",
    });
  });
});
