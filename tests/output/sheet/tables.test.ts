import { describe, expect, it } from "vitest";
import type { Report } from "../../../src/output/report/report.js";
import { fitTable } from "../../../src/output/sheet/tables.js";

const level = { min: 1.05, max: 1.05 };
const fit = {
  repeats: 12,
  rows: 1,
  tileWidth: 4.5,
  tileHeight: 4.25,
  aspectError: 0.0123,
  bandWidth: 6,
  referenceRadius: 10.2,
  cover: 360,
  lambda: { edge: level, crown: 1.06, topCrown: 1.1 },
  lanes: [],
};
const rowsOf = (report: object) =>
  [...fitTable(report as Report).matchAll(/<t[dh][^>]*>([^<]*)</g)].map(([, text]) => text);

describe("the table of the fit", () => {
  it("tells the stretch of a tile in per cent, with its sign", () => {
    expect(rowsOf({ fit, headroom: null }).slice(-5)).toEqual(["12", "1", "4.500", "4.250", "+1.23 %"]);
    expect(rowsOf({ fit: { ...fit, aspectError: -0.004 }, headroom: null }).at(-1)).toMatch(/^[-−]0\.40 %$/);
  });

  it("has a row for each lane, with its name", () => {
    const lane = { name: "low", repeats: 8, rows: 2, tileWidth: 3, tileHeight: 2, aspectError: 0 };
    const rows = rowsOf({ fit: { ...fit, lanes: [lane, { ...lane, name: "high", repeats: 9 }] }, headroom: null });
    expect(rows).toEqual(expect.arrayContaining(["lane", "low", "high", "8", "9"]));
    expect(rows).not.toContain("12");
  });

  it("is nothing without a pattern", () => {
    expect(fitTable({ fit: null, headroom: null } as Report)).toBe("");
  });
});
