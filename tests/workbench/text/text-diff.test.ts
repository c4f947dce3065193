import { expect, it } from "vitest";
import { changeBetween } from "../../../src/workbench/text/text-diff.js";

const applied = (before: string, after: string) => {
  const change = changeBetween(before, after);
  if (change === undefined) return before;
  return before.slice(0, change.from) + change.insert + before.slice(change.to);
};

it("changes as little as makes one text of the other", () => {
  expect(changeBetween('{"a": 12}', '{"a": 13}')).toEqual({ from: 7, to: 8, insert: "3" });
  expect(changeBetween("same", "same")).toBeUndefined();
});

it("makes it of texts that repeat themselves, end early or are empty", () => {
  for (const [before, after] of [
    ["aaa", "aa"],
    ["aa", "aaa"],
    ["", "abc"],
    ["abc", ""],
    ["abab", "ab"],
    ["xay", "xy"],
    ["ab", "ba"],
  ]) {
    expect(applied(before, after)).toBe(after);
  }
});
