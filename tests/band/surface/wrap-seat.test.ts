// Covers: src/band/fit/fit-band.ts
import { describe, expect, it } from "vitest";
import { fitBand } from "../../../src/band/fit/fit-band.js";
import { makeBand } from "../../../src/band/make-band.js";
import { wrapSeat } from "../../../src/band/surface/wrap-seat.js";
import { patternSchema } from "../../../src/design/pattern/pattern.js";
import { failureOf, spec } from "../profile/specs.js";
import { BORE_RADIUS } from "./forms.js";

const flat = spec({ width: 5, thickness: 2, outside: { form: "flat" } });

describe("where the pattern lies on the ring", () => {
  it.each([360, 180, 90])("has its middle at the top, +y, with a cover of %d", (cover) => {
    const fit = fitBand(patternSchema.parse({ cover }), { profile: flat, boreRadius: BORE_RADIUS, tolerance: 0.01 });
    if (fit === undefined) throw new Error("no fit");
    const wrap = wrapSeat(makeBand({ ...flat, width: fit.bandWidth }, BORE_RADIUS, 0.01), fit, true);
    const [x, y, z] = wrap.forward((fit.tileWidth * fit.repeats) / 2, 0, 0);
    expect(x).toBeCloseTo(0, 9);
    expect(y).toBeCloseTo(BORE_RADIUS + 2, 9);
    expect(z).toBeCloseTo(0, 9);
  });

  it("lets a corner be where nothing is raised", () => {
    const knife = makeBand(spec({ width: 6, thickness: 2, outside: { form: "knife", ridge: 0 } }), BORE_RADIUS, 0.01);
    expect(() => wrapSeat(knife, undefined, false)).not.toThrow();
    expect(failureOf(() => wrapSeat(knife, undefined, true)).code).toBe("seat-has-corner");
  });
});

describe("fitting a pattern to a band", () => {
  const warningsOf = (pattern: object, width: number) => {
    const warnings: { code: string; path?: string; value?: unknown }[] = [];
    const fit = fitBand(patternSchema.parse(pattern), {
      profile: { ...flat, width },
      boreRadius: BORE_RADIUS,
      tolerance: 0.01,
      warn: (warning) => warnings.push(warning),
    });
    return { fit, warnings };
  };

  it("is undefined without a pattern", () => {
    expect(fitBand(undefined, { profile: flat, boreRadius: BORE_RADIUS, tolerance: 0.01 })).toBeUndefined();
  });

  it("tells a changed width with the drawn and the built one", () => {
    const { fit, warnings } = warningsOf({}, 5.1);
    expect(warnings).toMatchObject([
      { code: "width-fitted", path: "profile.width", value: { drawn: 5.1, built: fit?.bandWidth } },
    ]);
  });

  it("says nothing of a band that fits already", () => {
    const { fit } = warningsOf({}, 5);
    expect(warningsOf({}, fit?.bandWidth as number).warnings).toEqual([]);
  });

  it("tells a tile stretched beyond 3 %, not one below", () => {
    const held = { fit: { hold: "band", repeats: 12 } };
    const { fit, warnings } = warningsOf(held, 5);
    expect(Math.abs(fit?.aspectError as number)).toBeGreaterThan(0.03);
    expect(warnings).toMatchObject([{ code: "tile-stretched", value: fit?.aspectError }]);
    expect(warningsOf({ fit: { hold: "band" } }, 5).warnings).toEqual([]);
  });
});
