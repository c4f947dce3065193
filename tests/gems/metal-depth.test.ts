import { describe, expect, it } from "vitest";
import { metalDepths } from "../../src/gems/metal-depth.js";

describe("the metal under a stone", () => {
  it("is 0.2 mm below the culet where it is flush set, 0.5 over the bore", () => {
    const depths = metalDepths({ crown: 0.3, girdle: 0.1, pavilion: 0.8, depth: 1.2 });
    expect(depths.map(({ depth }) => depth)).toEqual([1.4, 1.7]);
    for (const { source } of depths) expect(source).not.toBe("");
  });
});
