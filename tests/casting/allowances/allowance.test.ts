import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { castingAllowance, scaleAgainst, takesOff } from "../../../src/casting/allowances/allowance.js";
import { failureOf } from "../../support/failure-of.js";

const SEED = 20261127;

describe("scaling against shrinkage", () => {
  it("is 1 / (1 − s): 3.5 % takes 1.03627, not 1.035 (worked out beforehand: 1 / 0.965)", () => {
    expect(scaleAgainst(3.5).radial).toBeCloseTo(1.03627, 5);
    expect(scaleAgainst(0)).toEqual({ axial: 1, radial: 1 });
  });

  it("ends at the wanted size after the shrinkage, whatever it is", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 20, noNaN: true }),
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        (s, size) => {
          expect(size * scaleAgainst(s).axial * (1 - s / 100)).toBeCloseTo(size, 10);
        },
      ),
      { seed: SEED, numRuns: 100 },
    );
  });

  it("has its own factors along the axis and across it; print and metal multiply", () => {
    const { scale, patternScale } = castingAllowance({ shrinkage: { axial: 1, radial: 2 }, cure: 0.5 });
    expect(patternScale.axial).toBeCloseTo(1 / 0.99, 12);
    expect(scale.axial).toBeCloseTo(1 / (0.99 * 0.995), 12);
    expect(scale.radial).toBeCloseTo(1 / (0.98 * 0.995), 12);
  });

  it("lets a print that grows be made smaller", () => {
    expect(castingAllowance({ cure: -1 }).scale.axial).toBeCloseTo(1 / 1.01, 12);
  });

  it.each([
    [100, "casting.shrinkage"],
    [150, "casting.shrinkage"],
    [20.001, "casting.shrinkage"],
    [-5.001, "casting.shrinkage"],
    [Number.NaN, "casting.shrinkage"],
    [{ axial: 1, radial: 100 }, "casting.shrinkage.radial"],
    [{ axial: -50, radial: 1 }, "casting.shrinkage.axial"],
  ])("refuses %j", (shrinkage, path) => {
    const failure = failureOf(() => castingAllowance({ shrinkage }));
    expect(failure).toMatchObject({ code: "shrinkage-out-of-range", path, allowed: "-5 to 20 %, linear" });
    if (shrinkage === 100) expect(failure.message).toContain("all of its length");
  });
});

describe("finishing", () => {
  it("is one figure for all faces or one for each group", () => {
    expect(castingAllowance({ finishing: 0.1 }).finishing).toEqual({ bore: 0.1, rails: 0.1, relief: 0.1 });
    expect(castingAllowance({ finishing: { rails: 0.05 } }).finishing).toEqual({ bore: 0, rails: 0.05, relief: 0 });
    expect(takesOff(castingAllowance().finishing)).toBe(false);
  });

  it.each([[-0.1], [1.5], [Number.NaN]])("of %s mm is refused", (relief) => {
    const failure = failureOf(() => castingAllowance({ finishing: { relief } }));
    expect(failure).toMatchObject({ code: "finishing-out-of-range", path: "casting.finishing.relief" });
  });
});
