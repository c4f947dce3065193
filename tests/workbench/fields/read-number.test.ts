import { describe, expect, it } from "vitest";
import { readNumber, writeNumber } from "../../../src/workbench/fields/read-number.js";

const any = { whole: false, limits: {} };

describe("typed numbers", () => {
  it.each([
    ["1,5", 1.5],
    ["1.5", 1.5],
    [" 0,25 mm", 0.25],
    ["−2", -2],
    [",5", 0.5],
    ["3.", 3],
    ["+4", 4],
  ])("%s", (text, value) => expect(readNumber(text, any, "mm")).toEqual({ value }));

  it.each(["1,000.5", "1.2.3", "1e5", "0x10", "abc", "-", ".", "1 2", "NaN", "Infinity", "9".repeat(50)])(
    "%s is none",
    (text) => expect(readNumber(text, any)).toBe("no number"),
  );

  it("keep limits and wholeness", () => {
    expect(readNumber("0", { whole: false, limits: { above: 0 } })).toBe("out of range");
    expect(readNumber("1,5", { whole: true, limits: {} })).toBe("not whole");
    expect(readNumber("  ", any)).toBe("nothing");
  });

  it("are written with all digits, and read back as they were", () => {
    expect(writeNumber(12345.678, "de")).toBe("12345,678");
    expect(writeNumber(0.1 + 0.2, "en")).toBe("0.30000000000000004");
    for (const value of [0.05, 8.6, -3, 1000]) expect(readNumber(writeNumber(value, "de"), any)).toEqual({ value });
  });
});
