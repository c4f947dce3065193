import { describe, expect, it } from "vitest";
import { remembered } from "../../../src/base/math/remembered.js";

describe("a function that remembers", () => {
  it("makes each result once, until there are more than it keeps", () => {
    const asked: number[] = [];
    const square = remembered(2, (value: number) => {
      asked.push(value);
      return value * value;
    });
    expect([2, 3, 2, 3].map(square)).toEqual([4, 9, 4, 9]);
    expect(asked).toEqual([2, 3]);
    expect([4, 2].map(square)).toEqual([16, 4]);
    expect(asked).toEqual([2, 3, 4, 2]);
  });
});
