import { describe, expect, it } from "vitest";
import { ringArea } from "../../../src/flat/polygons.js";
import { flatArt } from "../../../src/judge/details/flat-art.js";
import { bodiesOf } from "../../support/stages.js";

const TILES = 8;

describe("the flat art that is judged", () => {
  const box = (x: number, height: number) => ({ path: `M ${x} -0.1 h 0.2 v 0.2 h -0.2 z`, height });
  const { pattern, wrap, fit } = bodiesOf({
    annulet: 1,
    size: { diameter: 17 },
    tolerance: 0.05,
    profile: { width: 6, thickness: 2, bore: { form: "flat", edge: 0 }, outside: { form: "flat", edge: 0 } },
    pattern: { fit: { repeats: TILES, hold: "band" }, regions: [box(0.1, 0.3), box(0.6, 0.5)] },
  });
  const art = flatArt(pattern, { around: wrap.round, seatLength: wrap.seatLength });
  /** Boxes in a region, by its area. */
  const boxesIn = (region: Parameters<typeof ringArea>[0][]) => {
    const area = region.reduce((sum, ring) => sum + ringArea(ring), 0) / art.grid.scale ** 2;
    const { tileWidth = Number.NaN, tileHeight = Number.NaN } = fit ?? {};
    return area / (0.2 * tileWidth * 0.2 * tileHeight);
  };

  it("has at each height what stands at least so high", () => {
    expect(art.levels.map(({ height }) => height)).toEqual([0.3, 0.5]);
    const [low, high] = art.levels.map(({ region }) => boxesIn([...region]));
    const all = boxesIn([...art.raised]);
    expect(low).toBeCloseTo(all, 9);
    expect(high).toBeGreaterThan(1 - 1e-3);
    expect(low - high).toBeGreaterThan(1 - 1e-3);
  });
});
