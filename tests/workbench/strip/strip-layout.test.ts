import { describe, expect, it } from "vitest";
import { checkDesign, flatTile } from "../../../src/index.js";
import { angleAt, layOutStrip, placeOfAngle, rowMiddles } from "../../../src/workbench/strip/strip-layout.js";

const STAY = { cover: 360, laneMiddle: 0, nearTop: false };

function design(pattern: object) {
  return {
    annulet: 1,
    name: "Strip",
    size: { system: "iso", value: 54 },
    tolerance: 0.05,
    profile: { width: 5, thickness: 1.8, bore: { form: "flat" }, outside: { form: "flat" } },
    pattern: { fit: { repeats: 12, hold: "band" }, regions: [{ path: "M.3-.1L.7-.1L.5.2Z", height: 0.3 }], ...pattern },
  };
}

describe("the strip", () => {
  it("has the own tile in its middle where the pattern goes all the way round", async () => {
    const tile = await flatTile(design({}));
    const strip = layOutStrip(tile, STAY);
    expect(strip.copies).toHaveLength(12);
    expect(strip.copies.indexOf(0)).toBe(5);
    expect(strip.to - strip.from).toBeCloseTo(strip.around, 9);
    expect(angleAt(strip, 0)).toBeCloseTo(270, 9);
    expect(placeOfAngle(strip, 90)).toBeCloseTo(strip.around / 2, 9);
    // Laid out as the library lays out the band on which findings are shown.
    const { band } = await checkDesign({ ...design({ regions: [] }), tolerance: 0.2 });
    expect(((band.start % 360) + 360) % 360).toBeCloseTo(angleAt(strip, 0), 9);
  });

  it("begins and ends with the cover where the pattern stops", async () => {
    const strip = layOutStrip(await flatTile(design({ cover: 180 })), { ...STAY, cover: 180 });
    expect([strip.from, strip.copies.length]).toEqual([0, 12]);
    expect(strip.to).toBeCloseTo(strip.around / 2, 9);
    expect([angleAt(strip, 0), angleAt(strip, strip.to)]).toEqual([0, expect.closeTo(180, 9)]);
    // On the plain zone: behind the end.
    expect(placeOfAngle(strip, 270)).toBeCloseTo(0.75 * strip.around, 9);
  });

  it("shows a medallion where it stands, at the top, and the tiles beside it", async () => {
    const document = design({ medallion: { tiles: 4, regions: [{ path: "M.3-.1L.7-.1L.5.1Z", height: 0.3 }] } });
    const medallion = layOutStrip(await flatTile(document, { part: "medallion" }), STAY);
    expect(medallion.copies).toEqual([0]);
    expect(angleAt(medallion, medallion.period / 2)).toBeCloseTo(90, 6);
    const beside = layOutStrip(await flatTile(document), STAY);
    expect(beside.copies).toHaveLength(8);
    expect(angleAt(beside, 0)).toBeCloseTo(angleAt(medallion, medallion.period), 6);
    expect(beside.from).toBe(0);
  });

  it("counts in periods where tiles vary", async () => {
    const strip = layOutStrip(await flatTile(design({ cycle: 3 })), STAY);
    expect([strip.tiles, strip.copies.length]).toEqual([3, 4]);
  });

  it("has rows about the middle, the lowest first", () => {
    expect(rowMiddles({ rows: 3, tileHeight: 2 })).toEqual([-2, 0, 2]);
  });
});
