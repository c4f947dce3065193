// Covers: src/judge/details/parted-necks.ts, src/judge/details/tip-width.ts
import { describe, expect, it } from "vitest";
import type { GridPath } from "../../../src/flat/grid.js";
import { subtract, unite } from "../../../src/flat/polygons.js";
import { narrowerThan, narrowest } from "../../../src/judge/details/narrow.js";

const scale = 1e6;

/** The search stops within this of the width, mm. */
const CLOSE = 0.005;

const ring = (points: readonly (readonly [number, number])[]): GridPath =>
  points.map(([x, y]) => ({ x: Math.round(x * scale), y: Math.round(y * scale) }));

const rectangle = (x0: number, y0: number, x1: number, y1: number) =>
  ring([
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ]);

const widthOf = (region: readonly GridPath[], limit: number, rest: object = {}) =>
  narrowest(region, limit, { scale, ...rest })?.width ?? Number.NaN;

describe("the narrowest place of a region", () => {
  it("is none in what is wide enough, whatever its corners", () => {
    expect(narrowest([rectangle(0, 0, 2, 1)], 0.9, { scale })).toBeUndefined();
    const triangle = ring([
      [0, 0],
      [2, 0],
      [1, Math.sqrt(3)],
    ]);
    expect(narrowest([triangle], 0.4, { scale })).toBeUndefined();
    expect(narrowest([], 0.4, { scale })).toBeUndefined();
  });

  it("is the neck between two bodies, however short", () => {
    for (const length of [0.1, 0.5, 3]) {
      const dumbbell = unite([
        rectangle(0, 0, 2, 2),
        rectangle(2 + length, 0, 4 + length, 2),
        rectangle(1, 0.9, 3 + length, 1.17),
      ]);
      const found = narrowest(dumbbell, 0.5, { scale });
      expect(Math.abs((found?.width ?? 0) - 0.27)).toBeLessThan(CLOSE);
      expect(found?.places[0].at[0]).toBeCloseTo(2 + length / 2, 2);
      expect(found?.places[0].at[1]).toBeCloseTo(1.035, 2);
      expect(found?.places[0].tip).toBe(false);
    }
  });

  it("is a line that stands alone, straight, bent or closed", () => {
    expect(Math.abs(widthOf([rectangle(0, 0, 5, 0.31)], 0.4) - 0.31)).toBeLessThan(CLOSE);
    const bent = unite([rectangle(0, 0, 3, 0.2), rectangle(2.8, 0, 3, 3)]);
    expect(Math.abs(widthOf(bent, 0.4) - 0.2)).toBeLessThan(CLOSE);
    const frame = subtract([rectangle(0, 0, 4, 4)], [rectangle(0.25, 0.25, 3.75, 3.75)]);
    expect(Math.abs(widthOf(frame, 0.4) - 0.25)).toBeLessThan(CLOSE);
  });

  it("is a tail on a body, by its own width", () => {
    const flag = unite([rectangle(0, 0, 2, 2), rectangle(1, 0.9, 4, 1.12)]);
    const found = narrowest(flag, 0.5, { scale });
    expect(Math.abs((found?.width ?? 0) - 0.22)).toBeLessThan(0.02);
    expect(found?.tip).toBe(false);
    expect(found?.places[0].at[0]).toBeCloseTo(3, 1);
    expect(Math.abs(widthOf(flag, 0.5, { tips: false }) - 0.22)).toBeLessThan(CLOSE);
  });

  it("is a point sharper than 29°, by its mean width over half a millimetre, whatever the limit; blunter ones are corners", () => {
    const spike = (angle: number) => {
      const half = 3 * Math.tan((angle * Math.PI) / 360);
      return ring([
        [-half, 0],
        [half, 0],
        [0, 3],
      ]);
    };
    // A sector of 20° and 0.5 mm over its radius.
    const mean = ((20 * Math.PI) / 180 / 2) * 0.5;
    for (const limit of [0.2, 0.3, 0.4, 0.6]) expect(Math.abs(widthOf([spike(20)], limit) - mean)).toBeLessThan(1e-3);
    expect(narrowest([spike(20)], 0.4, { scale })?.tip).toBe(true);
    expect(narrowest([spike(20)], 0.4, { scale, tips: false })).toBeUndefined();
    expect(narrowest([spike(45)], 0.4, { scale })).toBeUndefined();
  });

  it("is looked for within the stretch asked for", () => {
    const lines = [rectangle(0, 0, 1, 0.2), rectangle(3, 0, 4, 0.1)];
    expect(Math.abs(widthOf(lines, 0.4, { within: [0, 2] }) - 0.2)).toBeLessThan(CLOSE);
    expect(Math.abs(widthOf(lines, 0.4) - 0.1)).toBeLessThan(CLOSE);
  });

  it("tells every place, the narrowest first", () => {
    const lines = [rectangle(0, 0, 2, 0.3), rectangle(0, 2, 2, 2.1), rectangle(0, 4, 2, 4.2)];
    const places = narrowerThan(lines, 0.4, { scale });
    expect(places.map(({ width }) => Number(width.toFixed(2)))).toEqual([0.1, 0.2, 0.3]);
  });
});
