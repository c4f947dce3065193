import { expect, it } from "vitest";
import { moveEntry, ownName, withoutEntry } from "../../../src/workbench/fields/move-entry.js";

it("moves entries by one, not beyond the ends, and takes them away", () => {
  const list = ["a", "b", "c"];
  expect(moveEntry(list, 1, -1)).toEqual(["b", "a", "c"]);
  expect(moveEntry(list, 1, 1)).toEqual(["a", "c", "b"]);
  expect(moveEntry(list, 0, -1)).toEqual(list);
  expect(moveEntry(list, 2, 1)).toEqual(list);
  expect(withoutEntry(list, 1)).toEqual(["a", "c"]);
  expect(list).toEqual(["a", "b", "c"]);
});

it("names entries by what they call themselves", () => {
  expect(ownName({ name: "leaf", motif: { name: "star" } })).toBe("leaf");
  expect(ownName({ motif: { name: "star" } })).toBe("star");
  expect(ownName({ along: "rail" })).toBe("rail");
  expect(ownName({ along: { v: 1 } })).toBeUndefined();
  expect(ownName(7)).toBeUndefined();
});
