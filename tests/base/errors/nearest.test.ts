import { expect, it } from "vitest";
import { nearest } from "../../../src/base/errors/nearest.js";

it("asks for the choice that differs least, whatever the case of what was written", () => {
  expect(nearest("chanel", ["flat", "channel", "domed"])).toBe('did you mean "channel"?');
  expect(nearest("DOMED", ["flat", "domed"])).toBe('did you mean "domed"?');
});

it("asks for nothing where more than half would have to change", () => {
  // kitten → sitting takes three changes (V. I. Levenshtein's distance, the usual example): 3 of 7 is under a half.
  expect(nearest("kitten", ["sitting"])).toBe('did you mean "sitting"?');
  expect(nearest("ab", ["cb"])).toBe('did you mean "cb"?');
  expect(nearest("abc", ["xyc"])).toBeUndefined();
  expect(nearest("abcdefgh", ["flat"])).toBeUndefined();
});

it("knows nothing of values that are no text, of long ones, and of no choices", () => {
  expect(nearest(5, ["5"])).toBeUndefined();
  expect(nearest("5", [5])).toBeUndefined();
  expect(nearest("x".repeat(61), ["x".repeat(61)])).toBeUndefined();
  expect(nearest("flat", [])).toBeUndefined();
});
