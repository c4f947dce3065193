import { expect, test } from "vitest";
import { LONG, SlowPart } from "../../../src/workbench/title/slow-part.js";

test("a part that takes long is told, each part by its own time", () => {
  const slow = new SlowPart();
  expect(slow.at(100, "union", 100)).toBeUndefined();
  expect(slow.at(100, "union", 99 + LONG)).toBeUndefined();
  expect(slow.at(100, "union", 100 + LONG)).toBe("union");
  expect(slow.at(100, "measure", 101 + LONG)).toBeUndefined();
  expect(slow.at(100, "measure", 102 + 2 * LONG)).toBe("measure");
});

test("other work begins anew, though it is in the same part", () => {
  const slow = new SlowPart();
  slow.at(0, "union", 0);
  expect(slow.at(0, "union", LONG)).toBe("union");
  expect(slow.at(LONG, "union", LONG + 1)).toBeUndefined();
  expect(slow.at(LONG, "union", 2 * LONG)).toBe("union");
});
