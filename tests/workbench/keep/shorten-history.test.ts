import { expect, it } from "vitest";
import { shortenHistory } from "../../../src/workbench/keep/shorten-history.js";
import type { Change } from "../../../src/workbench/state/document.js";

const change = (text: string): Change => ({ text, sound: text, what: "typed", joins: undefined });
const list = (count: number, length: number) =>
  Array.from({ length: count }, (_, index) => change(`${index}`.padEnd(length, " ")));

it("keeps the lines next to the one that holds, and that one whatever its size", () => {
  const short = { changes: list(10, 3), at: 4 };
  expect(shortenHistory(short)).toEqual(short);
  const long = shortenHistory({ changes: list(1000, 4), at: 999 });
  expect([long.changes.length, long.at, long.changes[long.at].text]).toEqual([200, 199, "999 "]);
  const undone = shortenHistory({ changes: list(1000, 4), at: 0 });
  expect([undone.changes.length, undone.at, undone.changes[0].text]).toEqual([200, 0, "0   "]);
  const large = shortenHistory({ changes: list(10, 9e5), at: 9 });
  expect([large.changes.length, large.at]).toEqual([2, 1]);
  const huge = shortenHistory({ changes: list(3, 5e6), at: 1 });
  expect([huge.changes.length, huge.at]).toEqual([1, 0]);
});
