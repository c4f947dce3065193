/**
 * What stones come to: counts, sizes and weights by the published formula.
 */
import { describe, expect, it } from "vitest";
import { reportStones } from "../../src/stones/stone-report.js";
import { placeOn, tiles } from "../support/place-stones.js";

const flush = { form: "flush" };

describe("the report of stones", () => {
  it("is nothing where there are none", async () => {
    expect(reportStones(await placeOn([]))).toBeUndefined();
  });

  it("weighs them by the published formula: d² · depth · 0.0061 of a round diamond", async () => {
    const proportions = { table: 0.53, crownHeight: 0.162, girdle: 0.03, pavilionDepth: 0.431 };
    const group = { size: 2, proportions, place: { form: "row", count: 10 }, setting: flush };
    const report = reportStones(await placeOn([group]));
    // 2.0 mm, 1.246 mm deep: 0.0304 ct, as computed beside the formula.
    expect(report?.carats).toBeCloseTo(10 * 0.0061 * 4 * 1.246, 9);
    expect(report?.grams).toBeCloseTo((report?.carats as number) * 0.2, 12);
    expect(report?.groups[0]).toMatchObject({
      name: "stones 1",
      path: "stones[0]",
      cut: "round",
      gem: "diamond",
      setting: "flush",
    });
    expect(report?.groups[0].sizes).toEqual([{ length: 2, width: 2, count: 10, carats: report?.carats }]);
  });

  it("tells sizes of a row that graduates one by one, the largest first, and all numbers that it could have", async () => {
    const group = {
      size: 1.6,
      place: { form: "row", over: { from: 40, to: 140 }, count: 11, to: 1.1 },
      setting: flush,
    };
    const report = reportStones(await placeOn([group]));
    const [{ sizes, rows, count }] = report?.groups ?? [];
    expect(count).toBe(11);
    expect(sizes.map((size) => size.count)).toEqual([1, 2, 2, 2, 2, 2]);
    expect([sizes[0].length, sizes[5].length]).toEqual([1.6, 1.1]);
    expect(rows.map(({ choices }) => choices.map((choice) => choice.count))).toEqual([[10, 11, 12]]);
    expect(rows[0].choices.map(({ made }) => made)).toEqual([false, true, false]);
  });

  it("tells rows that come out alike once", async () => {
    const place = { form: "line", path: "M 0.5 -0.2 V 0.2" };
    const report = reportStones(await placeOn([{ size: 0.7, place, setting: flush }], tiles("p1")));
    expect(report?.groups[0].rows).toHaveLength(1);
    expect(report?.groups[0].rows[0]).toMatchObject({ rows: 10, closed: false });
  });
});
