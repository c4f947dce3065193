// Covers: src/design/path-schema.ts, src/design/pattern/area.ts, src/design/pattern/bead-fields.ts
// Covers: src/design/pattern/bead-run.ts, src/design/pattern/common.ts, src/design/pattern/defaults.ts
// Covers: src/design/pattern/region.ts, src/design/art-rules.ts, src/design/region-rules.ts, src/design/pattern/weave.ts
import { describe, expect, it } from "vitest";
import { MAX_PATH_LENGTH } from "../../../src/design/path-schema.js";
import { beadRunSchema } from "../../../src/design/pattern/bead-run.js";
import { PATTERN_DEFAULTS } from "../../../src/design/pattern/defaults.js";
import { patternSchema } from "../../../src/design/pattern/pattern.js";
import { regionSchema } from "../../../src/design/pattern/region.js";
import { weaveSchema } from "../../../src/design/pattern/weave.js";

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

/** Where a region is wrong, and with what. */
const problemsOf = (input: object) =>
  (regionSchema.safeParse(input).error?.issues ?? []).map(({ path, message }) => `${path.join(".")} ${message}`);

describe("a bead run's fields", () => {
  it.each([
    ["diameter", 0.1, 5, 0.001],
    ["to", 0.1, 5, 0.001],
    ["alternate", 0.1, 5, 0.001],
    ["pitch", 0.5, 20, 0.001],
    ["embed", 0.1, 0.9, 0.001],
    ["cornerAngle", 5, 175, 0.001],
    ["inset", 0, 20, 0.001],
    ["height", 0, 10, 0.001],
  ] as const)("%s goes from %f to %f, both among them", (field, least, most, hair) => {
    const takes = (value: number) => beadRunSchema.safeParse({ along: "rail", diameter: 0.4, [field]: value }).success;
    expect([least, most].map(takes)).toEqual([true, true]);
    expect([least - hair, most + hair].map(takes)).toEqual([false, false]);
  });

  it("count is a whole number of 1 or more; v is within 50 mm of the seat's middle", () => {
    const takes = (fields: object) => beadRunSchema.safeParse({ along: "rail", diameter: 0.4, ...fields }).success;
    expect([1, 2, 0, 1.5].map((count) => takes({ count }))).toEqual([true, true, false, false]);
    expect([-50, 50, -50.1, 50.1].map((v) => takes({ along: { v } }))).toEqual([true, true, false, false]);
  });
});

describe("what a region's art comes from", () => {
  const art = {
    path: "M 0 0 H 1",
    svg: "a.svg",
    shape: { path: "M 0 0 H 1" },
    motif: { name: "star" },
    text: { text: "A" },
  };
  const names = Object.keys(art) as (keyof typeof art)[];

  it("is one source, told at the path where there is none", () => {
    expect(problemsOf({ height: 0.5 })).toEqual(["path is missing"]);
    for (const name of names) expect(problemsOf({ height: 0.5, [name]: art[name] })).toEqual([]);
  });

  it("is not two: told at the second, with what the first is called", () => {
    const called = ["a path", "an svg file", "a shape", "a motif", "a text"];
    for (const [i, first] of names.entries()) {
      for (const second of names.slice(i + 1)) {
        const problems = problemsOf({ height: 0.5, [second]: art[second], [first]: art[first] });
        expect(problems).toEqual([`${second} is given beside ${called[i]}: keep one of them`]);
      }
    }
  });

  it("is placed where it is a file or a text, and by one size", () => {
    const wrong = (fields: object) => problemsOf({ height: 0.5, place: { turn: 5 }, ...fields });
    expect(wrong({ svg: art.svg })).toEqual([]);
    expect(wrong({ text: art.text })).toEqual([]);
    const misplaced = ["place belongs to an svg file or a text, and none is given"];
    for (const name of ["path", "shape", "motif"] as const) expect(wrong({ [name]: art[name] })).toEqual(misplaced);
    const sized = { text: { text: "A", height: 1 } };
    const twice = ["place has a fit or a scale beside the text's height: keep one of them"];
    expect(wrong(sized)).toEqual([]);
    expect(wrong({ ...sized, place: { scale: 1 } })).toEqual([]);
    expect(wrong({ ...sized, place: { scale: 2 } })).toEqual(twice);
    expect(wrong({ ...sized, place: { fit: [1, 1] } })).toEqual(twice);
  });
});

describe("a region's measures", () => {
  it.each([
    [{ mode: "sunk", depth: 0.3, round: 0.1 }, []],
    [{ mode: "sunk", depth: 0.3, broken: 0.1 }, ["broken does not belong to a sunk region"]],
    [{ mode: "sunk", height: 0.3 }, ["height does not belong to a sunk region", "depth is missing"]],
    [{ mode: "raised", height: 0.3, round: 0.1 }, []],
    [{ mode: "raised", height: 0.3, depth: 0.1 }, ["depth does not belong to a raised region"]],
    [{ mode: "raised", height: 0.3, broken: 0.1 }, ["broken does not belong to a raised region"]],
    [{ mode: "pierced", broken: 0.1 }, []],
    [{ mode: "pierced", round: 0.1 }, ["round does not belong to a pierced region"]],
    [
      { mode: "raised", section: { form: "flat", height: 0.3 }, round: 0.1 },
      ["round is given beside a section, which has its own"],
    ],
  ])("%j: %j", (fields, problems) => {
    expect(problemsOf({ path: "M 0 0 H 1", ...fields })).toEqual(problems);
  });
});

describe("a weave", () => {
  const woven = { ...region, ribbon: { width: 1, weave: { lift: 0.2 } } };

  it("goes over and under by turns, with all others, where nothing else is said", () => {
    expect(weaveSchema.parse({ lift: 0.2 })).toEqual({ lift: 0.2, set: "", over: "alternate" });
  });

  it("is of raised ribbons alone", () => {
    expect(problemsOf(woven)).toEqual([]);
    const { height: _, ...art } = woven;
    const raise = "mode must be raised where the ribbon is woven";
    expect(problemsOf({ ...art, mode: "pierced" })).toEqual([raise]);
    expect(problemsOf({ ...art, mode: "sunk", depth: 0.2 })).toEqual([raise]);
  });
});

describe("the degrees that a pattern covers", () => {
  it("are 5 to 360", () => {
    const takes = (cover: number) => patternSchema.safeParse({ cover }).success;
    expect([5, 360, 4.9, 360.1].map(takes)).toEqual([true, true, false, false]);
  });
});
