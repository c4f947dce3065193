import { listMotifs, openRing } from "annulet";
import { describe, expect, it } from "vitest";
import { firstBeads, firstRing, motifIn, patternOf, seatOf } from "../../../src/workbench/start/first-ring.js";

describe("the first ring", () => {
  it("is a sound design as it is, and with any motif", async () => {
    const plain = JSON.parse(firstRing("ring"));
    expect((await openRing(plain).profile()).width).toBe(6);
    for (const motif of listMotifs()) {
      const document = JSON.parse(firstRing("ring", motif));
      const fit = await openRing(document).fit();
      expect(fit?.bandWidth, motif.name).toBeCloseTo(6, 9);
      expect(motifIn(document)).toBe(motif.name);
    }
  });

  it("takes beads on rails, or at the seat's edges where there are none", async () => {
    for (const form of ["channel", "flat", "domed", "knife"]) {
      const document = JSON.parse(firstRing("ring"));
      document.profile.outside = { form };
      document.beads = firstBeads(document.profile);
      const [run] = await openRing(document).beads();
      expect(run.count, form).toBeGreaterThan(50);
      expect(run.onRail, form).toBe(form === "channel");
    }
  });

  it("reckons the pattern's width from what stands in the document, odd or not", () => {
    expect(seatOf({ width: 6, outside: { form: "channel", rail: 0.8 } })).toBeCloseTo(4.4, 12);
    expect(seatOf({ width: 6, outside: { form: "channel", rail: 5 } })).toBe(1.5);
    expect(seatOf({ width: 6, outside: { form: "flat" } })).toBe(6);
    expect(seatOf(undefined)).toBe(6);
  });

  it("gives lines their ribbon and none to what is filled", () => {
    const parts = listMotifs().map((motif) => [motif, patternOf(motif, 4).regions] as const);
    for (const [motif, regions] of parts) {
      const [region] = regions as { readonly ribbon?: object }[];
      expect(region.ribbon === undefined, motif.name).toBe(motif.ribbon === undefined);
    }
  });

  it("knows no motif where none is drawn", () => {
    for (const document of [
      {},
      undefined,
      { pattern: { regions: [{ path: "M 0 0" }] } },
      { pattern: { regions: {} } },
    ]) {
      expect(motifIn(document)).toBeUndefined();
    }
  });
});
