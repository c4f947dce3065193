import { expect, it } from "vitest";
import { stoneOf } from "../../../src/entries/stones.js";
import { stoneSizes } from "../../../src/workbench/engine/stone-sizes.js";

it("a stone's weight follows from its size, and its size from its weight, in own gems too", () => {
  const { carats } = stoneOf({ size: 6.5 });
  expect(stoneSizes({ stone: { size: 6.5 }, gems: undefined })).toEqual({ size: 6.5, carats });
  expect(stoneSizes({ stone: { carats }, gems: undefined })?.size).toBe(6.5);
  const gems = [
    { symbol: "glass", density: 2.5 },
    { symbol: "heavy-glass", density: 5 },
  ];
  const [light, heavy] = ["glass", "heavy-glass"].map((gem) => stoneSizes({ stone: { size: 6.5, gem }, gems })?.carats);
  expect((heavy ?? 0) / (light ?? 1)).toBeCloseTo(2, 9);
  expect(stoneSizes({ stone: { size: 6.5, gem: "glass" }, gems: undefined })).toBeUndefined();
  expect(stoneSizes({ stone: { size: 6.5 }, gems: "none" })).toBeDefined();
});
