import { describe, expect, it } from "vitest";
import { gems } from "../../src/gems/catalogue.js";
import { gemLookOf } from "../../src/gems/gem-look.js";

describe("gemLookOf", () => {
  it("has a look for every built-in gem, within what colours and indices can be", () => {
    const own = gemLookOf("nothing-of-the-kind");
    for (const { symbol } of gems) {
      const look = gemLookOf(symbol);
      expect(look, symbol).not.toBe(own);
      // Of gems the least is fluorite's 1.43, the most rutile's 2.9.
      expect(look.index, symbol).toBeGreaterThan(1.4);
      expect(look.index, symbol).toBeLessThan(2.9);
      expect(
        look.colour.every((share) => share > 0 && share < 1),
        symbol,
      ).toBe(true);
    }
  });

  it("shows gems of the user's own colourless, whatever they are called", () => {
    expect(gemLookOf("constructor")).toEqual(gemLookOf("glass"));
    expect(gemLookOf("glass").clear).toBe(true);
  });
});
