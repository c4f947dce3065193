// Covers: src/design/path-schema.ts, src/design/pattern/area.ts, src/design/pattern/bead-fields.ts
// Covers: src/design/pattern/bead-run.ts, src/design/pattern/common.ts, src/design/pattern/defaults.ts
// Covers: src/design/pattern/region.ts, src/design/art-rules.ts, src/design/region-rules.ts
import { describe, expect, it } from "vitest";
import { MAX_PATH_LENGTH } from "../../../src/design/path-schema.js";
import { beadRunSchema } from "../../../src/design/pattern/bead-run.js";
import { PATTERN_DEFAULTS } from "../../../src/design/pattern/defaults.js";
import { patternSchema } from "../../../src/design/pattern/pattern.js";
import { regionSchema } from "../../../src/design/pattern/region.js";

const region = { path: "M 0 0 H 1", height: 0.5 };

describe("the pattern's part of a document", () => {
  it("fills in its defaults", () => {
    expect(patternSchema.parse({})).toEqual({
      cover: 360,
      symmetry: "p1",
      cycle: 1,
      regions: [],
      gap: 0.3,
      fit: PATTERN_DEFAULTS.fit,
    });
    expect(regionSchema.parse(region)).toEqual({ ...region, ...PATTERN_DEFAULTS.region });
    expect(regionSchema.parse({ ...region, ribbon: { width: 1 } }).ribbon).toEqual({
      width: 1,
      ...PATTERN_DEFAULTS.ribbon,
    });
    expect(beadRunSchema.parse({ along: "rail", diameter: 0.4 })).toEqual({
      along: "rail",
      diameter: 0.4,
      embed: PATTERN_DEFAULTS.bead.embed,
      height: 0,
    });
  });

  it.each([
    ["an unknown key", { ...region, colour: "red" }],
    ["no height", { path: "M 0 0 H 1" }],
    ["a height of 0", { ...region, height: 0 }],
    ["a rounding below 0", { ...region, round: -0.1 }],
    ["an empty path", { ...region, path: "" }],
    ["an endless path", { ...region, path: "M".repeat(MAX_PATH_LENGTH + 1) }],
    ["an unknown unit", { ...region, unit: "inch" }],
    ["a ribbon without width", { ...region, ribbon: {} }],
    ["a number that is none", { ...region, height: Number.NaN }],
    ["beads that are too small", { ...region, beads: { diameter: 0.05 } }],
  ])("refuses a region with %s", (_, input) => {
    expect(regionSchema.safeParse(input).success).toBe(false);
  });

  it.each([
    ["half a repeat", { fit: { repeats: 7.5 } }],
    ["no rows", { fit: { rows: 0 } }],
    ["an unknown symmetry", { symmetry: "p4" }],
    ["more than the whole round", { cover: 361 }],
  ])("refuses a pattern with %s", (_, input) => {
    expect(patternSchema.safeParse(input).success).toBe(false);
  });

  it.each([[{ v: 1.5 }], ["rail"], ["seat-edge"], [{ path: "M 0 0 H 1" }]])("lets beads go along %j", (along) => {
    expect(beadRunSchema.safeParse({ along, diameter: 0.4 }).success).toBe(true);
  });

  it("refuses beads along anything else", () => {
    expect(beadRunSchema.safeParse({ along: "bore", diameter: 0.4 }).success).toBe(false);
    expect(beadRunSchema.safeParse({ along: { v: 1, path: "M 0 0 H 1" }, diameter: 0.4 }).success).toBe(false);
  });
});
