import { describe, expect, it } from "vitest";
import { makeBand } from "../../../src/band/make-band.js";
import { developAt } from "../../../src/band/surface/develop.js";
import { wrapSeat } from "../../../src/band/surface/wrap-seat.js";
import { spec } from "../profile/specs.js";
import { BORE_RADIUS } from "./forms.js";

describe("the developed surface", () => {
  it("is the flat pattern on a flat seat, and longer by h / R above it", () => {
    const profile = makeBand(spec({ width: 5, thickness: 2, outside: { form: "flat" } }), BORE_RADIUS, 0.01);
    const wrap = wrapSeat(profile, undefined, true);
    expect(developAt(wrap, 0)(3, -1.2)).toEqual([3, expect.closeTo(-1.2, 12)]);
    expect(developAt(wrap, 0.5)(3, 1.2)).toEqual([
      expect.closeTo(3 * (1 + 0.5 / (BORE_RADIUS + 2)), 12),
      expect.closeTo(1.2, 12),
    ]);
  });

  it("keeps each row's length round the band, and arc length across, on a domed arc", () => {
    const [width, thickness, rise, h] = [6, 2, 0.7, 0.4];
    const profile = makeBand(spec({ width, thickness, outside: { form: "domed", rise, edge: 0 } }), BORE_RADIUS, 0.01);
    const wrap = wrapSeat(profile, undefined, true);
    // Circle through chord and sagitta; the curve h above it is concentric.
    const rho = (width ** 2 / 4 + rise ** 2) / (2 * rise);
    const develop = developAt(wrap, h);
    for (const v of [-2.9, -1, 0, 0.3, 2]) {
      const radius = BORE_RADIUS + thickness - rho + (rho + h) * Math.cos(v / rho);
      const [u, across] = develop(2, v);
      // A whole turn of the row is as long as its circle.
      expect((u / 2) * 2 * Math.PI * wrap.referenceRadius).toBeCloseTo(2 * Math.PI * radius, 8);
      expect(across).toBeCloseTo((v * (rho + h)) / rho, 6);
    }
  });
});
