import { expect, it } from "vitest";
import { showKey, showPath } from "../../../src/base/errors/document-path.js";

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
