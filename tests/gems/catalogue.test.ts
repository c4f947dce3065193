// Covers: src/gems/families/*
import { describe, expect, it } from "vitest";
import { findGem, gems } from "../../src/gems/catalogue.js";
import { failureOf } from "../support/failure-of.js";

/** Specific gravities and hardness as the collection of published values has them, with how sure they are. */
const PUBLISHED: readonly (readonly [string, number, number, number, string])[] = [
  ["diamond", 3.52, 10, 10, "standard"],
  ["ruby", 4, 9, 9, "standard"],
  ["sapphire", 4, 9, 9, "standard"],
  ["emerald", 2.72, 7.5, 8, "standard"],
  ["topaz", 3.53, 8, 8, "memory"],
  ["amethyst", 2.65, 7, 7, "standard"],
  ["almandine", 4.05, 7.5, 7.5, "weak"],
  ["peridot", 3.34, 6.5, 7, "standard"],
  ["zircon", 4.65, 6.5, 7.5, "one credible source"],
  ["opal", 2.15, 5.5, 6.5, "standard"],
  ["pearl", 2.7, 2.5, 4.5, "one credible source"],
  ["cubic-zirconia", 5.8, 8, 8.5, "standard"],
  ["moissanite", 3.22, 9.25, 9.5, "memory"],
];

describe.each(gems)("$symbol", (gem) => {
  it("has a density inside what is published, a hardness of Mohs' scale, and a source beside each value", () => {
    const [least, most] = gem.densityRange ?? [1, 6];
    expect(gem.density.value).toBeGreaterThanOrEqual(least);
    expect(gem.density.value).toBeLessThanOrEqual(most);
    const [soft, hard] = gem.hardness?.value ?? [];
    if (soft === undefined || hard === undefined) throw new Error("no hardness");
    expect(soft).toBeGreaterThanOrEqual(1);
    expect(hard).toBeGreaterThanOrEqual(soft);
    expect(hard).toBeLessThanOrEqual(10);
    for (const told of [gem.density, gem.hardness, gem.heat, gem.ultrasonic, gem.fracture]) {
      expect(told?.source).not.toBe("");
      // What is from memory or practice says so, and what has a source does not.
      const unsourced = ["memory", "common practice"].includes(told?.certainty ?? "");
      if (told !== undefined) expect(/^(from memory|common practice, no source)$/.test(told.source)).toBe(unsourced);
    }
  });

  it("is cast in place only where it is hard", () => {
    if (gem.heat.value === "cast") expect(gem.hardness?.value[0]).toBeGreaterThanOrEqual(7);
  });
});

describe("the catalogue of gems", () => {
  it.each(PUBLISHED)("has what is published of %s", (symbol, density, soft, hard, certainty) => {
    const gem = findGem(symbol);
    expect([gem.density.value, ...(gem.hardness?.value ?? [])]).toEqual([density, soft, hard]);
    expect(gem.density.certainty).toBe(certainty);
  });

  it("has each symbol and name once", () => {
    expect(new Set(gems.map(({ symbol }) => symbol)).size).toBe(gems.length);
    expect(new Set(gems.map(({ name }) => name)).size).toBe(gems.length);
    expect(gems.length).toBeGreaterThanOrEqual(30);
  });

  it("names the nearest where a gem is unknown", () => {
    const { code, problems } = failureOf(() => findGem("saphire"));
    expect(code).toBe("gem-unknown");
    expect(problems[0].hint).toBe('did you mean "sapphire"?');
    expect(problems[0].allowed).toContain("diamond, ruby");
  });
});
