import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkHeadroom } from "../../src/judge/headroom.js";
import { failureOf, SEED } from "../band/profile/specs.js";

describe("headroom", () => {
  it("is the rails' height over the relief's", () => {
    const radius = fc.double({ min: 5, max: 15, noNaN: true });
    fc.assert(
      fc.property(radius, fc.double({ min: 0, max: 3, noNaN: true }), fc.boolean(), (rail, below, proud) => {
        expect(checkHeadroom(rail, rail - below, proud)).toBeCloseTo(below, 12);
      }),
      { seed: SEED, numRuns: 50 },
    );
  });

  it("is undefined without rails or relief", () => {
    expect(checkHeadroom(undefined, 10, false)).toBeUndefined();
    expect(checkHeadroom(10, undefined, false)).toBeUndefined();
  });

  it("fails by how much relief stands above the rails, unless it may", () => {
    const failure = failureOf(() => checkHeadroom(10, 10.1234, false));
    expect(failure).toMatchObject({ code: "headroom", path: "pattern", value: 0.1234 });
    expect(failure.message).toContain("0.123 mm above the rails");
    expect(checkHeadroom(10, 10.1234, true)).toBeCloseTo(-0.1234, 12);
  });

  it("lets relief flush with the rails pass, rounding and all", () => {
    expect(checkHeadroom(10, 10, false)).toBe(0);
    expect(checkHeadroom(10, 10 + 1e-9, false)).toBeCloseTo(0, 8);
    expect(failureOf(() => checkHeadroom(10, 10 + 1e-5, false)).code).toBe("headroom");
  });
});
