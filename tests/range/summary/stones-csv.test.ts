import { expect, it } from "vitest";
import { stonesCsv } from "../../../src/range/summary/stones-csv.js";
import type { StonesReport } from "../../../src/stones/stone-report.js";

it("has a row for each size of each group, and no formula", () => {
  const size = (length: number, count: number) => ({ length, width: length, count, carats: count * 0.0151 });
  const group = { path: "stones[0]", cut: "round", gem: "sapphire", setting: "grain", count: 5, carats: 0, grams: 0 };
  const groups = [{ ...group, name: "=row", sizes: [size(1.5, 2), size(1.2, 3)], rows: [], left: 0 }];
  const report = { groups, count: 5, carats: 0, grams: 0 } as unknown as StonesReport;
  expect(stonesCsv(report).split("\r\n")).toEqual([
    "group,gem,cut,setting,length (mm),width (mm),count,carats",
    "'=row,sapphire,round,grain,1.5,1.5,2,0.030",
    "'=row,sapphire,round,grain,1.2,1.2,3,0.045",
    "",
  ]);
  expect(stonesCsv(undefined).split("\r\n")).toHaveLength(2);
});
