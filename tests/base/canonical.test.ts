import { describe, expect, it } from "vitest";
import { canonicalText } from "../../src/base/canonical.js";

describe("the text of a value", () => {
  it("is the same for the same value alone", () => {
    const values = [
      [],
      [[]],
      {},
      [{}],
      "",
      "\n",
      'a"b',
      1,
      1.5,
      1e21,
      -0,
      0,
      Number.NaN,
      Number.POSITIVE_INFINITY,
      true,
      "true",
      null,
      "null",
      undefined,
      { a: 1, b: 2 },
      { b: 2, a: 1 },
      { a: undefined },
      { "a,b": 1 },
      { a: "1,b:2" },
      ["a,b"],
      ["a", "b"],
    ];
    const texts = values.map(canonicalText);
    expect(new Set(texts).size).toBe(values.length);
    expect(structuredClone(values).map(canonicalText)).toEqual(texts);
    for (const text of texts) expect(text).not.toContain("\n");
  });

  it("is refused to what is not plain", () => {
    for (const value of [
      () => 1,
      new Map(),
      new Uint8Array(2),
      Symbol("a"),
      1n,
      new Date(),
      [new Set()],
      { a: () => 1 },
    ]) {
      expect(() => canonicalText(value)).toThrow(TypeError);
    }
  });

  it("is that of a plain object without a prototype too", () => {
    expect(canonicalText(Object.assign(Object.create(null), { a: 1 }))).toBe(canonicalText({ a: 1 }));
  });
});
