import { build, type WeightTable } from "annulet";
import { beforeAll, expect, test } from "vitest";
import { showGrams } from "../../../src/output/report/show-grams.js";
import { titleWeight } from "../../../src/workbench/title/title-weight.js";

let weights: WeightTable;

beforeAll(async () => {
  const band = { width: 4, thickness: 1.6, outside: { form: "flat" } };
  const costing = { prices: { ag925: 1.1, "au750-yellow": 70 }, currency: "EUR" };
  const { report } = await build({ annulet: 1, size: { diameter: 17 }, profile: band, tolerance: 0.1, costing });
  weights = report.weights;
});

test("weights have as many digits as reports give them", () => {
  for (const row of weights.rows) {
    const shown = titleWeight(row.symbol, undefined, weights);
    const span = row.finishedRange === null ? 0 : (row.finishedRange[1] - row.finishedRange[0]) / row.finished;
    expect(shown?.grams.toFixed(shown.digits), row.symbol).toBe(showGrams(row.finished, span));
  }
});

test("the price is that of the design's own metal, where it gives one", () => {
  const { price, grams = 0 } = titleWeight("au750-yellow", undefined, weights) ?? {};
  expect(price?.amount).toBeCloseTo(70 * grams, 9);
  expect(price?.currency).toBe("EUR");
  expect(titleWeight("pt950-ru", undefined, weights)?.price).toBeUndefined();
});

test("before weights are known the report's mass stands for them, and nothing for a metal that is unknown", () => {
  expect(titleWeight("ag925", { ag925: 3.217 }, undefined)).toEqual({ grams: 3.217, digits: 2, price: undefined });
  expect(titleWeight("constructor", { ag925: 1 }, undefined)).toBeUndefined();
  expect(titleWeight("ag925", undefined, undefined)).toBeUndefined();
});
