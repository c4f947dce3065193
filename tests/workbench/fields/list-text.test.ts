import { describe, expect, it } from "vitest";
import { readList, writeList } from "../../../src/workbench/fields/list-text.js";

const pair = { kind: "pair", limits: { least: 0, most: 1 } } as const;
const numbers = { kind: "numbers", whole: true } as const;

describe("lists as a line of text", () => {
  it("are read with either decimal mark", () => {
    expect(readList("0.5, 0.25", pair)).toEqual([0.5, 0.25]);
    expect(readList("0,5; 0,25", pair)).toEqual([0.5, 0.25]);
    expect(readList("0,5, 0,25", pair)).toEqual([0.5, 0.25]);
    expect(readList("0,1,2", numbers)).toEqual([0, 1, 2]);
    expect(readList("leaf, stem ,", { kind: "texts" })).toEqual(["leaf", "stem"]);
  });

  it("refuse what is no such list", () => {
    expect(readList("0.5", pair)).toBeUndefined();
    expect(readList("0.5; 2", pair)).toBeUndefined();
    expect(readList("1; x", numbers)).toBeUndefined();
    expect(readList("1; 1.5", numbers)).toBeUndefined();
    expect(readList("1;".repeat(2000), numbers)).toBeUndefined();
  });

  it("are written as they are read", () => {
    for (const language of ["en", "de"]) {
      expect(readList(writeList([0.5, 0.25], language), pair)).toEqual([0.5, 0.25]);
    }
    expect(writeList(undefined, "en")).toBe("");
  });
});
