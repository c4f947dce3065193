// Covers: src/gems/stone-mesh.ts
import { describe, expect, it } from "vitest";
import { findGem, gems } from "../../src/gems/catalogue.js";
import type { Gem } from "../../src/gems/gem.js";
import { CUT_NAMES, type Stone } from "../../src/gems/stone.js";
import { stoneFacets, stoneMesh } from "../../src/gems/stone-mesh.js";
import { type StoneInput, stoneOf } from "../../src/gems/stone-of.js";
import { measureMesh } from "../../src/measure/measure.js";
import { failureOf } from "../support/failure-of.js";

describe("a stone", () => {
  it("by its size has all that follows from it", () => {
    const stone = stoneOf({ size: 6.5, proportions: "tolkowsky" });
    expect(stone).toMatchObject({ cut: "round", length: 6.5, width: 6.5, gem: "diamond" });
    expect(stone.heights.depth).toBeCloseTo(0.6219 * 6.5, 2);
    expect(stone.carats).toBeCloseTo(0.0061 * 0.6219 * 6.5 ** 3, 3);
    expect(stone.grams).toBeCloseTo(stone.carats / 5, 12);
    expect(stone.angles?.crown).toBeCloseTo(34.5, 9);
    expect(stone.angles?.pavilion).toBeCloseTo(40.75, 9);
    expect(stone.outline.perimeter).toBeCloseTo(6.5 * Math.PI, 9);
  });

  it("by its weight is as large as weighs that", () => {
    for (const cut of CUT_NAMES) {
      const stone = stoneOf({ cut, carats: 0.75, gem: "sapphire" });
      expect(stone.carats).toBeCloseTo(0.75, 12);
      const { carats } = stoneOf({
        cut,
        size: stone.length,
        width: stone.width,
        narrow: stone.narrow,
        gem: "sapphire",
      });
      expect(carats).toBeCloseTo(0.75, 12);
    }
  });

  it("may be of a gem of one's own", () => {
    const paste: Gem = {
      ...findGem("diamond"),
      symbol: "paste",
      density: { value: 2.5, source: "ours", certainty: "own" },
    };
    const own = stoneOf({ size: 2, gem: "paste" }, { gems: [...gems, paste] });
    expect(own.carats).toBeCloseTo(0.0018 * 2.5 * 4 * own.heights.depth, 12);
    expect(failureOf(() => stoneOf({ size: 2, gem: "paste" })).code).toBe("gem-unknown");
  });

  it.each<[string, unknown, string, RegExp]>([
    ["nothing", {}, "size", /either size or carats/],
    ["size and weight", { size: 2, carats: 1 }, "size", /either/],
    ["weight and width", { cut: "oval", carats: 1, width: 3 }, "width", /carats alone/],
    ["no weight", { carats: 0 }, "carats", /above 0/],
    ["a text", { size: "2" }, "size", /0.3 to 50/],
    ["a width that does not suit", { cut: "oval", size: 6, width: 7 }, "width", /^2.00 to 6.00 mm/],
    ["a round stone that is not", { size: 3, width: 2.9 }, "width", /as long as wide/],
    ["a narrow end of a round stone", { size: 3, narrow: 2 }, "narrow", /nothing/],
    [
      "a narrow end that is wide",
      { cut: "tapered-baguette", size: 4, width: 2, narrow: 2.1 },
      "narrow",
      /0.60 to 2.00/,
    ],
  ])("is refused of %s", (_, input, path, allowed) => {
    const { code, problems } = failureOf(() => stoneOf(input as StoneInput));
    expect([code, problems[0].path]).toEqual(["stone-size", path]);
    expect(problems[0].allowed).toMatch(allowed);
  });
});

describe("arguments of a stone", () => {
  it("are refused where there is no such field, or gems are none", () => {
    expect(failureOf(() => stoneOf({ size: 3, proportion: "usual" } as StoneInput)).problems[0].hint).toMatch(
      /proportions/,
    );
    expect(failureOf(() => stoneOf({ size: 3 }, { gems: [{}] as Gem[] })).code).toBe("option-invalid");
    expect(failureOf(() => stoneOf(undefined as unknown as StoneInput)).code).toBe("option-invalid");
  });
});

describe("the mesh of a stone", () => {
  it("is that of its facets", () => {
    const stone = stoneOf({ cut: "emerald", size: 7, width: 5 });
    expect(measureMesh(stoneMesh(stone)).volume).toBeCloseTo(59.16, 2);
    expect(stoneFacets(stone).facets).toHaveLength(57);
  });

  it.each(CUT_NAMES)("can be made of every %s as it was found, also of its plain data", (cut) => {
    const stone = stoneOf({ cut, carats: 0.3 });
    const { length, width, narrow, proportions, gem } = JSON.parse(JSON.stringify(stone)) as Stone;
    expect(stoneMesh({ cut, length, width, ...(narrow === undefined ? {} : { narrow }), proportions, gem })).toEqual(
      stoneMesh(stone),
    );
  });

  it("follows the tolerance", () => {
    const stone = stoneOf({ size: 5 });
    const count = (tolerance: number) => stoneMesh(stone, { tolerance }).triangles.length;
    expect(count(0.0005)).toBeGreaterThan(count(0.05));
    expect(failureOf(() => stoneMesh(stone, { tolerance: 0 })).code).toBe("option-invalid");
  });

  it("is refused of what is no stone, and of proportions that do not close", () => {
    expect(failureOf(() => stoneMesh(undefined as unknown as Stone)).code).toBe("stone-size");
    const stone = stoneOf({ size: 5 });
    const proportions = { ...stone.proportions, table: 0.9 };
    expect(failureOf(() => stoneMesh({ ...stone, proportions })).code).toBe("proportions-cannot-close");
    const none = { ...stone.proportions, girdle: Number.NaN };
    expect(failureOf(() => stoneMesh({ ...stone, proportions: none })).code).toBe("proportions-invalid");
  });
});
