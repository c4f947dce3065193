// Covers: src/size/iso.ts, src/size/number-label.ts, src/size/uk.ts
import { describe, expect, it } from "vitest";
import { findSizeSystem } from "../../src/size/catalogue.js";
import { readNumberLabel, writeQuarters } from "../../src/size/number-label.js";

describe("number labels", () => {
  it.each([7.5, "7.5", "7,5", "7½", "7 ½", "7 1/2", "7-1/2", " 7 1⁄2 ", "7 2/4"])("reads %j as 7.5", (label) => {
    expect(readNumberLabel(label)).toBe(7.5);
  });

  it.each(["¼", "1/4", ".25", "0¼"])("reads %j as a quarter", (label) => {
    expect(readNumberLabel(label)).toBe(0.25);
  });

  it.each(["7.5½", "7 3/2", "7/0", "1,000.5", "½7", "seven"])("does not read %j", (label) => {
    expect(readNumberLabel(label)).toBeUndefined();
  });

  it("writes quarters so that they are read back", () => {
    expect([0, 0.25, 1, 7.5, 12.75].map(writeQuarters)).toEqual(["0", "¼", "1", "7½", "12¾"]);
    for (let quarters = 0; quarters <= 64; quarters++) {
      expect(readNumberLabel(writeQuarters(quarters / 4))).toBe(quarters / 4);
    }
  });
});

describe("UK letters", () => {
  const uk = findSizeSystem("uk");

  it.each(["N½", "n½", "N 1/2", "N1/2", "N.5", "N 0.5", " N ½ ", "N,5"])("reads %j as N and a half", (label) => {
    expect(uk.circumferenceOf(label)).toBeCloseTo(54.375, 12);
  });

  it.each(["Z+1", "Z1", "z + 1"])("reads %j as one step past Z", (label) => {
    expect(uk.circumferenceOf(label)).toBe(70);
  });

  it.each(["N1", "N 1½", "NN", "Z+7", "14", 14])("refuses %j", (label) => {
    expect(() => uk.circumferenceOf(label)).toThrow(/A to Z/);
  });

  it("writes quarters, also past Z", () => {
    expect([37.5, 54.0625, 69.0625, 70, 71.875].map(uk.labelOf)).toEqual(["A", "N¼", "Z¼", "Z+1", "Z+2½"]);
  });
});

describe("ISO designations", () => {
  const iso = findSizeSystem("iso");

  it.each(["ISO 8653-43", "iso8653-43", "ISO 8653:2016-43", "43", 43])("reads %j", (label) => {
    expect(iso.circumferenceOf(label)).toBe(43);
  });

  it.each(["ISO 8653", "ISO 8654-43", "ISO 8653-90"])("refuses %j", (label) => {
    expect(() => iso.circumferenceOf(label)).toThrow(/35 to 80/);
  });

  it("covers the standard's gauge stick, 41 to 76", () => {
    expect([iso.labelOf(41), iso.labelOf(76)]).toEqual(["41", "76"]);
  });
});

it("accepts sizes between the steps and writes the nearest step", () => {
  const us = findSizeSystem("us");
  const circumference = us.circumferenceOf(7.3);
  expect(circumference).toBeCloseTo(Math.PI * (11.6332 + 0.8128 * 7.3), 10);
  expect(us.labelOf(circumference)).toBe("7¼");
});
