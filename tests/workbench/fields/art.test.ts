import { readDesign } from "annulet";
import { expect, it } from "vitest";
import { ART, artOf, changeArt, isRegion } from "../../../src/workbench/fields/art.js";

it("changes what a region is drawn from, and drops what went with it alone", () => {
  const drawn = { name: "leaf", svg: "leaf.svg", take: { only: ["white"] }, height: 0.4 };
  expect(artOf(drawn)).toBe("svg");
  expect(changeArt(drawn, "motif")).toEqual({ name: "leaf", height: 0.4, motif: { name: "lozenge" } });
  expect(changeArt(drawn, "svg")).toEqual(drawn);
  expect(artOf({ name: "none" })).toBeUndefined();
  expect(changeArt({ path: "M 0 0 L 1 0", ribbon: { width: 0.3 } }, "text")).toEqual({ text: { text: "abc" } });
});

it("begins with art that a design may have", () => {
  for (const key of ART) {
    const regions = [{ ...changeArt({}, key), height: 0.3 }];
    const document = {
      annulet: 1,
      size: { diameter: 17 },
      profile: { width: 6, thickness: 2, outside: { form: "flat" } },
      pattern: { regions },
    };
    expect(() => readDesign(document), key).not.toThrow();
  }
});

it("knows regions by their place", () => {
  expect(["pattern.regions", "pattern.lanes.regions", "pattern", "pattern.regions.shape"].map(isRegion)).toEqual([
    true,
    true,
    false,
    false,
  ]);
});
