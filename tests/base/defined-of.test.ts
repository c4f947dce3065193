import { expect, it } from "vitest";
import { definedOf } from "../../src/base/defined-of.js";

it("leaves out what is undefined alone", () => {
  expect(Object.keys(definedOf({ a: undefined, b: null, c: 0, d: "", e: false }))).toEqual(["b", "c", "d", "e"]);
});
