import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Path, readPath, showKey, showPath } from "../../../src/base/errors/document-path.js";

it("shows names after dots, indices in brackets, and the root as nothing", () => {
  expect(showPath(["pattern", "regions", 2, "ribbon", "width"])).toBe("pattern.regions[2].ribbon.width");
  expect(showPath([0, 1])).toBe("[0][1]");
  expect(showPath([])).toBeUndefined();
});

it("puts what is no plain name in brackets and quotes, at the root too, so that no two paths look alike", () => {
  expect(showPath(["a.b"])).toBe('["a.b"]');
  expect(showPath(["a", "", "c d"])).toBe('a[""]["c d"]');
  expect(showPath(["a", "0"])).not.toBe(showPath(["a", 0]));
});

it("cuts keys of more than 60 characters", () => {
  expect(showKey("x".repeat(60))).toBe(`"${"x".repeat(60)}"`);
  expect(showKey("x".repeat(61))).toBe(`"${"x".repeat(60)}…"`);
  expect(showPath(["x".repeat(61)])).toBe(`["${"x".repeat(60)}…"]`);
});

describe("a written path", () => {
  it.each<[string, Path | undefined]>([
    ["name", ["name"]],
    ["pattern.regions[2].ribbon.width", ["pattern", "regions", 2, "ribbon", "width"]],
    ['costing.prices["a b"].x', ["costing", "prices", "a b", "x"]],
    ["au750-yellow", ["au750-yellow"]],
    ["[0][1]", [0, 1]],
    ["", undefined],
    [".a", undefined],
    ["a.", undefined],
    ["a..b", undefined],
    ["a[", undefined],
    ["a[-1]", undefined],
    ["a[1", undefined],
    ["a b", undefined],
    ['a["\\u12"]', undefined],
  ])("%s", (text, keys) => {
    expect(readPath(text)).toEqual(keys);
  });

  it("is read as it is shown", () => {
    const key = fc.oneof(fc.nat(1000), fc.string({ minLength: 1, maxLength: 12 }), fc.constantFrom("a", "b_1", "$"));
    fc.assert(
      fc.property(fc.array(key, { minLength: 1, maxLength: 5 }), (keys) => {
        expect(readPath(showPath(keys) as string)).toEqual(keys);
      }),
    );
  });
});
