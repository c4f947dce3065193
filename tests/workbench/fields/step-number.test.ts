import { describe, expect, it } from "vitest";
import { stepOf, stepped } from "../../../src/workbench/fields/step-number.js";

const free = { whole: false, limits: {} };

describe("steps of a number", () => {
  it("are such as the unit has, ones of whole numbers, finer in a narrow range", () => {
    expect(stepOf(free, "mm")).toBe(0.05);
    expect(stepOf(free, "degrees")).toBe(1);
    expect(stepOf({ whole: true, limits: {} }, undefined)).toBe(1);
    expect(stepOf({ whole: false, limits: { least: 0.06, most: 0.1 } }, undefined)).toBeCloseTo(0.0001, 10);
    expect(stepOf({ whole: false, limits: { least: 1, most: 1 } }, "mm")).toBe(0.05);
  });

  it("lead from step to step without odd digits", () => {
    expect(stepped(0.1, 1, free, 0.05)).toBe(0.15);
    expect(stepped(0.93, 1, free, 0.05)).toBe(0.95);
    expect(stepped(0.93, -1, free, 0.05)).toBe(0.9);
    expect(stepped(8.6, 10, free, 0.05)).toBe(9.1);
    expect(stepped(0.3, -6, free, 0.05)).toBe(0);
  });

  it("stop at the limits", () => {
    expect(stepped(0.99, 1, { whole: false, limits: { most: 1 } }, 0.05)).toBe(1);
    expect(stepped(1, 1, { whole: false, limits: { most: 1 } }, 0.05)).toBe(1);
    expect(stepped(0.05, -1, { whole: false, limits: { above: 0 } }, 0.05)).toBe(0.05);
    expect(stepped(3, -10, { whole: true, limits: { least: 1 } }, 1)).toBe(1);
  });
});
