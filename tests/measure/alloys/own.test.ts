import { describe, expect, it } from "vitest";
import { ownAlloy } from "../../../src/measure/alloys/own.js";
import { failureOf } from "../../support/failure-of.js";

describe("a material of the user's own", () => {
  it("is mixed by the mixing rule: Au 583, Ag 104, Cu 313 ‰ is 13.33 g/cm³ (1/ρ = Σ wᵢ/ρᵢ with 19.32, 10.49, 8.96, worked out beforehand)", () => {
    const alloy = ownAlloy({ symbol: "marsh-gold", mix: { Au: 0.583, Ag: 0.104, Cu: 0.313 } });
    expect(alloy.density).toBeCloseTo(13.33, 2);
    expect(alloy).toMatchObject({ name: "marsh-gold", kind: "other", certainty: "computed" });
  });

  it("is what its density says, with its own name, range and source", () => {
    const own = {
      symbol: "eel-bronze",
      name: "Eel bronze",
      density: 8.7,
      range: [8.6, 8.8],
      source: "weighed",
    } as const;
    expect(ownAlloy(own)).toEqual({ ...own, kind: "other", certainty: "own" });
  });

  it.each([
    [{ symbol: "x", mix: { Au: 0.5, Ag: 0.4 } }, "mix-shares", "alloys[2].mix"],
    [{ symbol: "x", mix: {} }, "mix-shares", "alloys[2].mix"],
    [{ symbol: "x", mix: { Au: 583, Ag: 104, Cu: 313 } }, "mix-shares", "alloys[2].mix"],
    [{ symbol: "x", mix: { Au: 1.2, Ag: -0.2 } }, "mix-shares", "alloys[2].mix"],
    [{ symbol: "x" }, "alloy-unclear", "alloys[2]"],
    [{ symbol: "x", density: 9, mix: { Cu: 1 } }, "alloy-unclear", "alloys[2]"],
    [{ symbol: "ag925", density: 10.4 }, "alloy-known", "alloys[2].symbol"],
  ])("%j is refused", (own, code, path) => {
    expect(failureOf(() => ownAlloy(own, "alloys[2]"))).toMatchObject({ code, path });
  });
});
