import { buildProfile, readDesign } from "annulet";
import { describe, expect, it } from "vitest";
import { partEnds, type SectionPart, sectionParts } from "../../../src/band/profile/section-parts.js";

function partsOf(outside: object, more: object = {}) {
  const { profile } = readDesign({
    annulet: 1,
    size: { diameter: 17 },
    profile: { width: 6, thickness: 2.2, outside, ...more },
  });
  const section = buildProfile(profile, 8.5, 0.01);
  const parts = sectionParts(section);
  /** mm of each part along the section. */
  const lengths = new Map<SectionPart, number>();
  section.polyline.forEach(([w, r], i) => {
    const [w1, r1] = section.polyline[(i + 1) % section.polyline.length];
    lengths.set(parts[i], (lengths.get(parts[i]) ?? 0) + Math.hypot(w1 - w, r1 - r));
  });
  return { parts, lengths, section };
}

describe("the parts of a section", () => {
  it("of a channel are seat, rails, sides and bore, as long as they are drawn", () => {
    const { lengths } = partsOf({ form: "channel", rail: 1, depth: 0.6, edge: 0 }, { bore: { form: "flat", edge: 0 } });
    expect(lengths.get("seat")).toBeCloseTo(4, 6);
    expect(lengths.get("rail")).toBeCloseTo(2 * (1 + 0.6), 6);
    expect(lengths.get("side")).toBeCloseTo(2 * 2.2, 6);
    expect(lengths.get("bore")).toBeCloseTo(6, 6);
    expect(lengths.size).toBe(4);
  });

  it("of a flat band have no rail, and rounded edges belong half to the side and half to the outside", () => {
    const { lengths } = partsOf({ form: "flat", edge: 0.4 }, { bore: { form: "flat", edge: 0 } });
    expect(lengths.get("outside")).toBeCloseTo((0.4 * Math.PI) / 2, 1);
    expect(lengths.get("side")).toBeCloseTo(2 * 1.8 + (0.4 * Math.PI) / 2, 1);
    expect(lengths.has("rail")).toBe(false);
  });

  it("have a step where one is cut along the edges", () => {
    const { lengths } = partsOf(
      { form: "flat", edge: 0 },
      { step: { width: 0.5, depth: 0.4, edge: 0 }, bore: { form: "flat", edge: 0 } },
    );
    expect(lengths.get("step")).toBeCloseTo(2 * (0.5 + 0.4), 1);
  });

  it("begin and end where the next does, twice each on both edges of a channel", () => {
    const { parts, section } = partsOf({ form: "channel", rail: 1, depth: 0.6, edge: 0 });
    const ends = partEnds(parts, ["rail"]).map((at) => Math.abs(section.polyline[at][0]));
    expect(ends.map((w) => w.toFixed(2)).sort()).toEqual(["2.00", "2.00", "3.00", "3.00"]);
    expect(partEnds(parts, ["seat", "outside", "rail", "side", "bore"])).toEqual([]);
    expect(partEnds(parts, ["step"])).toEqual([]);
  });
});
