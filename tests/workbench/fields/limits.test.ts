import { describe, expect, it } from "vitest";
import { isWithin, readLimits } from "../../../src/workbench/fields/limits.js";
import { schemaPlaces } from "../../support/schema-places.js";

describe("limits of a field", () => {
  it.each([
    ["above 0 to 1000", { above: 0, most: 1000 }],
    ["5 to 60", { least: 5, most: 60 }],
    ["-5 to below 20", { least: -5, below: 20 }],
    ["0 or more", { least: 0 }],
    ["above 0", { above: 0 }],
    ["up to 7", { most: 7 }],
    ["up to below 7", { below: 7 }],
    ["2 entries; 0 to 1", { least: 0, most: 1 }],
    ["2 entries", {}],
    ["1 to 200 characters", {}],
    [undefined, {}],
  ])("are read of %s", (words, limits) => expect(readLimits(words)).toEqual(limits));

  it("are read of every range of the schema", () => {
    const unread = [...schemaPlaces()].filter(
      ([, { range }]) =>
        range !== undefined && !/entries|characters/.test(range) && Object.keys(readLimits(range)).length === 0,
    );
    expect(unread.map(([place, { range }]) => `${place}: ${range}`)).toEqual([]);
  });

  it("hold their ends, or not", () => {
    expect([0, 1, 2].map((value) => isWithin(value, { above: 0, most: 1 }))).toEqual([false, true, false]);
    expect([0, 1].map((value) => isWithin(value, { least: 0, below: 1 }))).toEqual([true, false]);
    expect(isWithin(-1e9, {})).toBe(true);
  });
});
