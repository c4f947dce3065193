import { describe, expect, it } from "vitest";
import { decimalsOf, rulerMarks } from "../../../src/workbench/strip/ruler-ticks.js";

describe("a ruler", () => {
  it("has the finest marks that can be read", () => {
    expect(rulerMarks(-1, 7.2, 30, "mm")).toEqual({ step: 2, marks: [0, 2, 4, 6].map((mark) => mark) });
    expect(rulerMarks(0, 0.31, 500, "mm").marks).toHaveLength(4);
    expect(rulerMarks(10, 100, 2, "degrees")).toEqual({ step: 30, marks: [30, 60, 90] });
  });

  it("has its ends among them, and never too many", () => {
    expect(rulerMarks(-2, 2, 60, "mm").marks).toEqual([-2, -1, 0, 1, 2]);
    expect(rulerMarks(0, 1e6, 1e6, "mm").marks.length).toBeLessThanOrEqual(200);
    expect(rulerMarks(5, 1, 10, "mm").marks).toEqual([]);
  });

  it("writes no more decimals than its step has", () => {
    expect([0.01, 0.05, 0.1, 0.5, 1, 5, 10, 15, 90].map(decimalsOf)).toEqual([2, 2, 1, 1, 0, 0, 0, 0, 0]);
  });
});
