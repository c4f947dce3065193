// Covers: src/design/rules/*
import { describe, expect, it } from "vitest";
import { findRuleSet, ruleSets } from "../../../src/design/rules/catalogue.js";
import { RULE_NAMES, RULES } from "../../../src/design/rules/rule-set.js";
import { failureOf } from "../../support/failure-of.js";

describe.each(ruleSets)("$name", (set) => {
  it("has a limit with a source for every rule, and is found by its name", () => {
    expect(set.name).toMatch(/^[a-z-]+$/);
    expect(findRuleSet(set.name)).toBe(set);
    for (const rule of RULE_NAMES) {
      const { limit, source } = set.limits[rule];
      if (RULES[rule].unit !== "") expect(limit).toBeGreaterThan(0);
      expect(source).not.toBe("");
      if (RULES[rule].unit === "mm") expect(limit).toBeLessThanOrEqual(rule === "heavy" ? 4 : 1.5);
    }
    expect(Object.keys(set.limits).sort()).toEqual([...RULE_NAMES].sort());
  });

  it("says no source where there is none", () => {
    for (const { source, certainty } of Object.values(set.limits)) {
      expect(source.includes("no source")).toBe(certainty === "common practice");
    }
  });
});

describe("published limits (casting houses' guidelines, a resin guide, a retail guide)", () => {
  it.each([
    // morrisandwatson.com, CAD guidelines: any thickness, broad flats, gaps and holes, edge radius.
    ["general-casting", "wall", 0.4],
    ["general-casting", "shank", 0.5],
    ["general-casting", "gap", 0.2],
    ["general-casting", "hole", 0.2],
    ["general-casting", "corner", 0.125],
    ["general-casting", "edge", 0.125],
    ["general-casting", "side", 0.4],
    // The same: depth of a gap or hole at most its width.
    ["general-casting", "groove-depth", 1],
    ["general-casting", "hole-depth", 1],
    // A print service: finishing takes 0.05 to 0.15 mm in all.
    ["general-casting", "relief", 0.15],
    // saqlainbullion.com: sections over 4 mm.
    ["general-casting", "heavy", 4],
    // gemwares.com: wall, engraving, prong; the shank a retail guide's.
    ["conservative", "wall", 0.8],
    ["conservative", "groove", 0.3],
    ["conservative", "engraving", 0.5],
    // mssolucoesjoalheria.com: detail.
    ["conservative", "relief", 0.3],
    ["conservative", "line", 0.6],
    ["conservative", "shank", 1.5],
    // gia.edu benchmark, stuller.com: between girdles; ganoksin: beside a row, round a seat; a US supplier's sheet: bezels, culet to bore.
    ["general-casting", "girdles", 0.1],
    ["general-casting", "beside", 0.5],
    ["conservative", "web", 0.3],
    ["conservative", "ledge", 0.3],
    ["conservative", "bezel", 0.5],
    ["conservative", "under", 0.5],
    // gemwares.com: prong of a model.
    ["conservative", "prong", 0.6],
    // A castable-resin maker's guide, July 2019: wire.
    ["fine-resin-print", "line", 0.3],
    ["fine-resin-print", "wall", 0.3],
  ] as const)("%s %s is %s", (name, rule, limit) => {
    expect(findRuleSet(name).limits[rule].limit).toBe(limit);
  });

  it.each([
    // What makes a ring fail in the casting is an error; what may only come out less crisp, or costs work, is not. Chosen.
    ["general-casting", ["shank", "wall"], ["heavy", "corner", "undercut"]],
    ["conservative", ["wall"], ["undercut"]],
    [
      "fine-resin-print",
      ["shank", "wall"],
      ["heavy", "relief", "engraving", "corner", "edge", "undercut", "girdles", "grain", "level"],
    ],
  ])("of %s: %j are errors, %j notes, and all others warnings", (name, errors, notes) => {
    const { limits } = findRuleSet(name);
    const of = (severity: string) => RULE_NAMES.filter((rule) => limits[rule].severity === severity);
    expect({ errors: of("error"), notes: of("note") }).toEqual({ errors, notes });
    expect(of("warning").length).toBe(RULE_NAMES.length - errors.length - notes.length);
  });

  it("are strictest in the conservative set", () => {
    const [general, strict] = ["general-casting", "conservative"].map((name) => findRuleSet(name).limits);
    for (const rule of RULE_NAMES) {
      const order = RULES[rule].keep === "at least" ? 1 : -1;
      expect(order * (strict[rule].limit - general[rule].limit)).toBeGreaterThanOrEqual(0);
    }
  });
});

it("a set that is not there is named with the nearest", () => {
  expect(failureOf(() => findRuleSet("conservativ"))).toMatchObject({
    code: "rules-unknown",
    hint: 'did you mean "conservative"?',
    allowed: "general-casting, conservative, fine-resin-print",
  });
});
