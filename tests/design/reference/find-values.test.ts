import { describe, expect, it } from "vitest";
import { findValues } from "../../../src/design/reference/find-values.js";

const document = {
  parts: [{ form: "reed", height: 1 }, { form: "pool" }, { form: "reed", height: [2, 3] }],
  names: { a: { long: 4 }, b: { long: 5 } },
};

describe("finding values", () => {
  it.each([
    ["parts.height", [1, [2, 3]]],
    ["parts.reed.height", [1, [2, 3]]],
    ["parts.pool.height", []],
    ["names.*.long", [4, 5]],
    ["names.a.long", [4]],
    ["names.constructor", []],
    ["parts.height.deeper", []],
    ["", [document]],
  ])("at %s", (path, values) => {
    expect(findValues(path, document)).toEqual(values);
  });
});
