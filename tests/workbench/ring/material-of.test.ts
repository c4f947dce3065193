// Covers: src/view/look-of.ts
import { expect, test } from "vitest";
import { lookOf } from "../../../src/entries/view.js";
import { materialOf } from "../../../src/workbench/ring/material-of.js";

test("a document's material looks as it is named: built in, of its own kind, or like any alloy", () => {
  expect(materialOf({ material: "au750-red" })).toEqual(lookOf("au750-red"));
  expect(materialOf({})).toEqual(lookOf("ag925"));
  const own = { material: "mine", alloys: [{ symbol: "other" }, { symbol: "mine", kind: "platinum", density: 20 }] };
  expect(materialOf(own).colour).toEqual(lookOf({ symbol: "pt", name: "", kind: "platinum" }).colour);
  expect(materialOf({ material: "nothing" }).metal).toBe(true);
});

test("a document that is being typed is no reason to fail", () => {
  for (const document of [{ material: 7 }, { material: null }, { material: "x", alloys: "y" }, { alloys: [null, 3] }]) {
    expect(materialOf(document).colour).toHaveLength(3);
  }
});
