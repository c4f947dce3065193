import { expect, it } from "vitest";
import { alloys } from "../../../src/measure/alloys/catalogue.js";
import { nearestMaterial } from "../../../src/measure/alloys/nearest-material.js";

it.each([
  ["18ct yellow", "au750-yellow"],
  ["18 K yellow gold", "au750-yellow"],
  ["9ct yellow", "au375-yellow"],
  ["9 carat rose gold", "au375-red"],
  ["14k white palladium", "au585-white-pd"],
  ["18kt white gold", "au750-white"],
  ["au750-white-ni", "au750-white"],
  ["22ct", "au916"],
  ["10K green", "au417-green"],
  ["sterling", "ag925"],
  ["sterling silver 925", "ag925"],
  ["750 red", "au750-red"],
  ["platinum 900", "pt900-ir"],
  ["au750yelow", "au750-yellow"],
  ["bronse", "bronze"],
  ["beeswax", "wax-bees"],
])("%j means %s", (written, symbol) => {
  expect(nearestMaterial(written, alloys)).toBe(symbol);
});

it("names none where nothing is said and little is alike", () => {
  expect(nearestMaterial("unobtainium", alloys)).toBeUndefined();
  expect(nearestMaterial("18ct yellow", [])).toBeUndefined();
});

it("leaves a fineness out that nothing has, and takes letters that changed places for a slip", () => {
  expect(nearestMaterial("ag952", alloys)).toBe("ag925");
  expect(nearestMaterial("8ct yellow gold", alloys)).toBe("au375-yellow");
});
