// Covers: src/workbench/strip/shared-view.ts
import { describe, expect, it } from "vitest";
import type { Bench } from "../../../src/workbench/state/bench.js";
import {
  BAND_MARGIN,
  fitBand,
  fitStrip,
  held,
  panned,
  toFlat,
  toScreen,
  zoomed,
} from "../../../src/workbench/strip/flat-view.js";
import { sharedView } from "../../../src/workbench/strip/shared-view.js";

const SIZE = [800, 300] as const;
const SIZES = { bandWidth: 6, tileWidth: 4, from: -20, to: 36 };

describe("the flat view", () => {
  it("goes to the screen and back", () => {
    const view = { scale: 30, u: 2, v: -1, hold: "free" } as const;
    expect(toScreen(view, SIZE, [2, -1])).toEqual([400, 150]);
    expect(toScreen(view, SIZE, [3, 0])).toEqual([430, 120]);
    expect(toFlat(view, SIZE, toScreen(view, SIZE, [0.25, 0.5]))).toEqual([0.25, 0.5]);
  });

  it("keeps what lies under the pointer as it comes nearer, within its limits", () => {
    const view = fitBand(SIZE, SIZES);
    const nearer = zoomed(view, SIZE, [100, 40], 3);
    expect(nearer.scale).toBeCloseTo(3 * view.scale, 9);
    toFlat(nearer, SIZE, [100, 40]).forEach((at, i) => {
      expect(at).toBeCloseTo(toFlat(view, SIZE, [100, 40])[i], 9);
    });
    expect(zoomed(view, SIZE, [0, 0], 1e9).scale).toBe(2000);
    expect(zoomed(view, SIZE, [0, 0], 1e-9).scale).toBe(1);
  });

  it("follows a pointer that takes hold of the paper", () => {
    const view = fitBand(SIZE, SIZES);
    const moved = panned(view, [50, -20]);
    const [x, y] = toScreen(moved, SIZE, [0, 0]);
    expect([x - toScreen(view, SIZE, [0, 0])[0], y - toScreen(view, SIZE, [0, 0])[1]]).toEqual([
      expect.closeTo(50, 9),
      expect.closeTo(-20, 9),
    ]);
  });

  it("fits the band, or the whole strip, and holds that until the maker chooses", () => {
    const band = fitBand(SIZE, SIZES);
    expect(band.scale * 6).toBeCloseTo(300 - 2 * BAND_MARGIN, 9);
    const strip = fitStrip(SIZE, SIZES);
    expect(toScreen(strip, SIZE, [-20, 0])[0]).toBeGreaterThan(0);
    expect(toScreen(strip, SIZE, [36, 0])[0]).toBeLessThan(800);
    const wider = { ...SIZES, bandWidth: 8 };
    expect(held(band, SIZE, wider)).toEqual(fitBand(SIZE, wider));
    expect(held(strip, SIZE, wider)).toEqual(fitStrip(SIZE, wider));
    const own = zoomed(band, SIZE, [0, 0], 2);
    expect(held(own, SIZE, wider)).toBe(own);
    // Larger letters leave the band less room.
    const room = (letters: number) => fitBand(SIZE, { ...SIZES, letters }).scale * SIZES.bandWidth;
    expect(room(1) - room(1.5)).toBeCloseTo(2 * 0.5 * BAND_MARGIN, 9);
  });

  it("is shared by the views of one bench", () => {
    const [one, other] = [{} as Bench, {} as Bench];
    expect(sharedView(one)).toBe(sharedView(one));
    expect(sharedView(one)).not.toBe(sharedView(other));
  });
});
