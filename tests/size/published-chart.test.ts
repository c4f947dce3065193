/** Spans of published charts: UK from a casting house and Wikipedia, India from two chains, the two US tables. */
import { expect, it } from "vitest";
import { findSizeSystem } from "../../src/size/catalogue.js";
import { chartSpan } from "../../src/size/published-chart.js";
import { resolveSize } from "../../src/size/size.js";

const spanOf = (system: string, label: string | number) => findSizeSystem(system).spanOf?.(label);

it.each([
  ["uk", "A", [37.5, 37.8]],
  ["uk", "N", [53.75, 54.35]],
  ["uk", "Z", [68.5, 69.43]],
  ["india", 2, [41.7, 42.7]],
  ["india", 4, [43.6, 44.1]],
  ["india", 30, [69.7, 71]],
  ["us", 7, [Math.PI * (0.458 + 7 * 0.032) * 25.4, Math.PI * 0.683 * 25.4]],
  ["us-gauge", 0, [Math.PI * 0.454 * 25.4, Math.PI * 0.458 * 25.4]],
] as const)("%s %s is told with what charts have", (system, label, expected) => {
  const span = spanOf(system, label);
  expect(span?.[0]).toBeCloseTo(expected[0], 9);
  expect(span?.[1]).toBeCloseTo(expected[1], 9);
});

it.each([
  ["india", 14],
  ["uk", "Z+2"],
  ["us", 15],
  ["us-gauge", 5],
  ["iso", 54],
  ["japan", 13],
])("%s %s has no span: charts agree, or there is no other", (system, label) => {
  expect(spanOf(system, label)).toBeUndefined();
});

it("draws straight lines between a chart's entries and says nothing beyond them", () => {
  const chart = {
    source: "ours",
    entries: [
      [1, 40],
      [3, 44],
    ],
  } as const;
  expect(chartSpan(42.5, 2, [chart])).toEqual([42, 42.5]);
  expect(chartSpan(42.04, 2, [chart])).toBeUndefined();
  expect(chartSpan(50, 4, [chart])).toBeUndefined();
});

it("is told beside the size, which it does not change", () => {
  expect(resolveSize({ system: "uk", value: "N" })).toMatchObject({ circumference: 53.75, span: [53.75, 54.35] });
  expect(resolveSize({ system: "iso", value: 54 })).not.toHaveProperty("span");
});
