import { describe, expect, it } from "vitest";
import { makeBand } from "../../../src/band/make-band.js";
import { meanSeatRadius } from "../../../src/band/profile/moments.js";
import { measureStretch } from "../../../src/band/surface/stretch.js";
import { wrapSeat } from "../../../src/band/surface/wrap-seat.js";
import { spec } from "../profile/specs.js";
import { BORE_RADIUS } from "./forms.js";

describe("the stretch report", () => {
  it("is the closed form on a domed arc", () => {
    const [width, thickness, rise, h] = [6, 2, 0.7, 0.4];
    const profile = makeBand(spec({ width, thickness, outside: { form: "domed", rise, edge: 0 } }), BORE_RADIUS, 0.01);
    // Circle through chord and sagitta: ρ = (c² / 4 + s²) / 2s; half angle α; mean of ρ cos over ±α is ρ sin α / α.
    const rho = (width ** 2 / 4 + rise ** 2) / (2 * rise);
    const alpha = Math.asin(width / 2 / rho);
    const top = BORE_RADIUS + thickness;
    const mean = top - rho + (rho * Math.sin(alpha)) / alpha;
    const { seat, top: raised, edge, crown, topCrown } = measureStretch(wrapSeat(profile, undefined, true), h);
    expect(meanSeatRadius(profile)).toBeCloseTo(mean, 12);
    expect(seat.max).toBeCloseTo(top / mean, 10);
    expect(seat.min).toBeCloseTo((top - rise) / mean, 10);
    expect(raised.max).toBeCloseTo((top + h) / mean, 10);
    expect(raised.min).toBeCloseTo((top - rise + h * Math.cos(alpha)) / mean, 10);
    expect([edge.min, edge.max, crown, topCrown]).toEqual([
      expect.closeTo(seat.min, 10),
      expect.closeTo(seat.min, 10),
      expect.closeTo(seat.max, 10),
      expect.closeTo(raised.max, 10),
    ]);
  });

  it("is 1 everywhere on a flat seat, and 1 + h / R above it", () => {
    const profile = makeBand(spec({ width: 5, thickness: 2, outside: { form: "flat" } }), BORE_RADIUS, 0.01);
    const { seat, top } = measureStretch(wrapSeat(profile, undefined, true), 0.5);
    expect([seat.min, seat.max]).toEqual([1, 1]);
    expect(top.max).toBeCloseTo(1 + 0.5 / (BORE_RADIUS + 2), 12);
    expect(top.min).toBe(top.max);
  });
});
