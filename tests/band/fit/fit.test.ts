import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type MeasureSeat, type SeatMeasure, solveFit, tileAt } from "../../../src/band/fit/fit.js";
import { fitBand } from "../../../src/band/fit/fit-band.js";
import { meanSeatRadius } from "../../../src/band/profile/moments.js";
import { buildOutline } from "../../../src/band/profile/profile.js";
import { fitSchema } from "../../../src/design/pattern/fit.js";
import { type ProfileSpec, profileSchema } from "../../../src/design/profile/profile.js";
import { collector, failureOf, SEED } from "../../flat/strips.js";

const asked = (spec: Readonly<Record<string, unknown>> = {}) => fitSchema.parse(spec);
const flat =
  (radius: number): MeasureSeat =>
  (width) => ({ seatLength: width, meanRadius: radius });
const BORE = 55 / (2 * Math.PI);

const profile = (outside: Readonly<Record<string, unknown>>, width = 8.6): ProfileSpec =>
  profileSchema.parse({ width, thickness: 2.1, bore: { form: "comfort", rise: 0.2, edge: 0.3 }, outside });

const outsides = {
  flat: { form: "flat", edge: 0.15 },
  domed: { form: "domed", rise: 0.6, edge: 0.15 },
  concave: { form: "concave", dip: 0.3, edge: 0.2 },
  channel: { form: "channel", rail: 0.9, depth: 0.75, edge: 0.15 },
  "crowned channel": { form: "channel", rail: 0.8, depth: 0.6, crown: 0.2, edge: 0.15 },
} as const;

function seatOf(spec: ProfileSpec, tolerance = 0.01): SeatMeasure {
  const outline = buildOutline(spec, BORE, tolerance);
  return { seatLength: outline.seatLength, meanRadius: meanSeatRadius(outline) };
}

/** A measure that counts its calls. */
function counted(measure: MeasureSeat): { readonly measure: MeasureSeat; calls: number } {
  const counter = {
    calls: 0,
    measure: (width: number) => {
      counter.calls++;
      return measure(width);
    },
  };
  return counter;
}

describe("the fit", () => {
  it("cuts 65.31 mm into 7 square tiles of 9.330 mm", () => {
    // Check value, common practice, no source.
    const radius = 65.31 / (2 * Math.PI);
    const solved = solveFit(asked({ repeats: 7 }), 360, 8, flat(radius));
    expect(solved.tileWidth.toFixed(3)).toBe("9.330");
    expect(solved.tileHeight).toBeCloseTo(65.31 / 7, 9);
    expect(solved.bandWidth).toBeCloseTo(65.31 / 7, 9);
    expect(solved.stretch).toBe(1);
  });

  it.each(Object.entries(outsides))("makes the seat as long as its tiles on a %s band", (_, outside) => {
    for (const [rows, aspect] of [
      [1, 1],
      [2, 0.8],
      [3, 1.4],
    ]) {
      const spec = profile(outside);
      const solved = fitBand(
        { fit: asked({ rows, aspect }), cover: 360 },
        { profile: spec, boreRadius: BORE, tolerance: 0.01 },
      );
      if (solved === undefined) throw new Error("no fit");
      const seat = seatOf({ ...spec, width: solved.bandWidth });
      expect(Math.abs(seat.seatLength - rows * aspect * solved.tileWidth)).toBeLessThan(1e-6);
      expect(solved.tileWidth * solved.repeats).toBeCloseTo(2 * Math.PI * seat.meanRadius, 9);
      expect(solved.tileHeight).toBe(seat.seatLength / rows);
    }
  });

  it("takes fewer than 15 measures a candidate, on every profile", () => {
    for (const outside of Object.values(outsides)) {
      const spec = profile(outside);
      const counter = counted((width) => seatOf({ ...spec, width }));
      const { candidates } = solveFit(asked(), 360, spec.width, counter.measure);
      expect(candidates.length).toBeGreaterThan(4);
      expect(counter.calls / candidates.length).toBeLessThan(15);
    }
  });

  it("finds the width that bisection finds", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 14, noNaN: true }),
        fc.constantFrom(...Object.values(outsides)),
        fc.integer({ min: 5, max: 14 }),
        (width, outside, repeats) => {
          const spec = profile(outside, width);
          const excess = (w: number) => {
            const seat = seatOf({ ...spec, width: w });
            return seat.seatLength - tileAt(seat, 360, repeats);
          };
          const solved = solveFit(asked({ repeats }), 360, width, (w) => seatOf({ ...spec, width: w }));
          expect(excess(solved.bandWidth - 1e-8)).toBeLessThan(0);
          expect(excess(solved.bandWidth + 1e-8)).toBeGreaterThan(0);
        },
      ),
      { seed: SEED, numRuns: 40 },
    );
  });

  it("sorts candidates best first, and takes the nearest to the drawn band", () => {
    const solved = solveFit(asked(), 360, 7, flat(9));
    const away = solved.candidates.map(({ bandWidth }) => Math.abs((bandWidth ?? Number.POSITIVE_INFINITY) - 7));
    expect(away).toEqual([...away].sort((a, b) => a - b));
    expect(solved.repeats).toBe(solved.candidates[0].repeats);
    for (let repeats = 1; repeats < 40; repeats++) {
      expect(Math.abs((2 * Math.PI * 9) / repeats - 7)).toBeGreaterThanOrEqual(Math.abs(solved.bandWidth - 7) - 1e-9);
    }
  });

  it("stretches the tile where the band is held", () => {
    const solved = solveFit(asked({ hold: "band", repeats: 9, rows: 2, aspect: 0.6 }), 360, 7.4, flat(9));
    const tile = (2 * Math.PI * 9) / 9;
    expect(solved.bandWidth).toBe(7.4);
    expect(solved.stretch).toBeCloseTo(7.4 / (2 * 0.6 * tile), 12);
    expect(solved.aspectError).toBeCloseTo(solved.stretch - 1, 12);
    const auto = solveFit(asked({ hold: "band" }), 360, 7.4, flat(9));
    const errors = auto.candidates.map(({ stretch }) => Math.abs(Math.log(stretch)));
    expect(errors).toEqual([...errors].sort((a, b) => a - b));
    expect(auto.repeats).toBe(8);
  });

  it("shares out the stretch covered alone", () => {
    const solved = solveFit(asked({ repeats: 3 }), 120, 7, flat(9));
    expect(solved.tileWidth).toBeCloseTo((2 * Math.PI * 9) / 9, 9);
  });

  it("fits freely drawn seats, whose length jumps, to within the jump", () => {
    const path = "M -4 1.6 C -2 2.3 2 2.3 4 1.6";
    const spec = profile({ form: "free", path }, 8);
    const top = Math.max(...buildOutlineHeights(spec));
    const free = { ...spec, thickness: top };
    for (const repeats of [6, 7, 8, 9]) {
      const solved = solveFit(asked({ repeats }), 360, 8, (width) => seatOf({ ...free, width }, 0.05));
      expect(Math.abs(solved.aspectError)).toBeLessThan(0.01);
      const seat = seatOf({ ...free, width: solved.bandWidth }, 0.05);
      expect(solved.tileHeight).toBe(seat.seatLength);
    }
  });

  it("accepts a root at a jump and says how far it is off", () => {
    const jump: MeasureSeat = (width) => ({
      seatLength: width + (width > 7 ? 0.01 : -0.02),
      meanRadius: 7 / (2 * Math.PI),
    });
    const solved = solveFit(asked({ repeats: 1 }), 360, 6, jump);
    expect(solved.bandWidth).toBeCloseTo(7, 8);
    expect(solved.aspectError).toBeCloseTo(0.01 / 7, 6);
  });
});

describe("a fit that cannot be", () => {
  /** Nothing under 5 mm wide can be built. */
  const sturdy: MeasureSeat = (width) => {
    if (width < 5) return seatOf(profile({ form: "channel", rail: 0.9, depth: 0.75, edge: 5 }, width));
    return { seatLength: width, meanRadius: 9 };
  };

  it("says which repeats would do", () => {
    const error = failureOf(() => solveFit(asked({ repeats: 30 }), 360, 7, sturdy));
    expect([error.code, error.path, error.value]).toEqual(["fit-impossible", "pattern.fit.repeats", 30]);
    const listed = (error.allowed?.match(/\d+/g) ?? []).map(Number);
    expect(listed.length).toBeGreaterThan(0);
    for (const repeats of listed) expect(solveFit(asked({ repeats }), 360, 7, sturdy).repeats).toBe(repeats);
    expect(error.hint).toMatch(/"hold": "band"/);
    expect(solveFit(asked({ repeats: 30, hold: "band" }), 360, 7, sturdy).repeats).toBe(30);
  });

  it("marks the candidate, and takes few measures to see it", () => {
    const counter = counted(sturdy);
    const { candidates } = solveFit(asked({ repeats: 9 }), 360, 7, counter.measure);
    const lost = candidates.filter(({ bandWidth }) => bandWidth === undefined);
    expect(lost.map(({ repeats }) => repeats).sort()).toEqual([12, 13]);
    expect(counter.calls / candidates.length).toBeLessThan(15);
    expect(candidates.slice(-2)).toEqual(lost);
  });

  it("passes on what is wrong with the drawn band itself", () => {
    expect(failureOf(() => solveFit(asked(), 360, 3, sturdy)).code).not.toBe("fit-impossible");
  });

  it("is not one whose band would be wider than 60 mm", () => {
    expect(failureOf(() => solveFit(asked({ repeats: 1, aspect: 2 }), 360, 7, flat(9))).code).toBe("fit-impossible");
  });
});

describe("fitting a band", () => {
  it("warns of a changed width and of a stretched tile, and takes frozen input", () => {
    const { codes, warn } = collector();
    const spec = Object.freeze(profile(outsides.channel));
    fitBand({ fit: Object.freeze(asked()), cover: 360 }, { profile: spec, boreRadius: BORE, tolerance: 0.01, warn });
    fitBand(
      { fit: asked({ hold: "band", repeats: 5 }), cover: 360 },
      { profile: spec, boreRadius: BORE, tolerance: 0.01, warn },
    );
    expect(codes).toEqual(["width-fitted", "tile-stretched"]);
    expect(fitBand(undefined, { profile: spec, boreRadius: BORE, tolerance: 0.01 })).toBeUndefined();
  });
});

/** The highest point of this free drawing: its curve's middle, (y0 + 3 y1 + 3 y2 + y3) / 8. */
function buildOutlineHeights({ outside }: ProfileSpec): number[] {
  const path = "path" in outside ? (outside.path ?? "") : "";
  const [, y0, , y1, , y2, , y3] = (path.match(/-?[\d.]+/g) ?? []).map(Number);
  return [(y0 + 3 * y1 + 3 * y2 + y3) / 8];
}
