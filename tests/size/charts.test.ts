// Covers: src/size/german.ts, src/size/india.ts, src/size/interpolation.ts, src/size/japan.ts, src/size/swiss.ts
// Covers: src/size/scale.ts, src/size/us.ts, src/size/us-gauge.ts, src/size/us-tables.ts
/** Outside checks: published charts against the systems. */
import { describe, expect, it } from "vitest";
import { findSizeSystem } from "../../src/size/catalogue.js";

interface Chart {
  readonly source: string;
  readonly system: string;
  readonly measure: "diameter" | "circumference";
  /** How far a published value may be off by its rounding, mm. */
  readonly rounding: number;
  readonly rows: readonly (readonly [label: string | number, value: number])[];
}

const charts: readonly Chart[] = [
  {
    source: "en.wikipedia.org, Ring size (circumference and diameter)",
    system: "iso",
    measure: "diameter",
    rounding: 0.051,
    rows: [
      [49, 15.6],
      [52, 16.6],
      [54, 17.2],
      [57, 18.1],
      [60, 19.1],
      [63, 20.1],
      [66, 21.0],
      [69, 22.0],
      [72, 22.9],
    ],
  },
  {
    source: "en.wikipedia.org, Ring size (US chart)",
    system: "us",
    measure: "diameter",
    rounding: 0.00501,
    rows: [
      [2, 13.26],
      [3, 14.07],
      [4, 14.88],
      [5, 15.7],
      [6, 16.51],
      [7, 17.32],
      [8, 18.14],
      [9, 18.95],
      [10, 19.76],
      [11, 20.57],
      [12, 21.39],
      [13, 22.2],
    ],
  },
  {
    source: "gemsociety.org, Ring Size Comparison Chart, inches × 25.4",
    system: "us-gauge",
    measure: "diameter",
    rounding: 1e-9,
    rows: [
      [0, 11.5316],
      [4, 14.859],
      [7, 17.3482],
      [10, 19.8374],
      [13, 22.3266],
    ],
  },
  {
    source: "Rowlett's dictionary of units, after BS 6820:1987",
    system: "uk",
    measure: "circumference",
    rounding: 1e-9,
    rows: [
      ["A", 37.5],
      ["A½", 38.125],
      ["C", 40],
      ["N", 53.75],
      ["Z", 68.75],
    ],
  },
  {
    source: "Japanese charts of the customary number",
    system: "japan",
    measure: "diameter",
    rounding: 1e-9,
    rows: [
      [1, 13],
      [7, 15],
      [13, 17],
      [19, 19],
      [25, 21],
    ],
  },
  {
    source: "duhafinejewellery.com (ellistonjewelry.in agrees in all of these)",
    system: "india",
    measure: "circumference",
    rounding: 1e-9,
    rows: [
      [1, 41],
      [3, 42.9],
      [5, 44.8],
      [6, 46.1],
      [7, 47.4],
      [8, 48],
      [9, 48.7],
      [10, 50],
      [11, 51.2],
      [12, 51.9],
      [13, 53.1],
      [14, 54.4],
      [16, 56.3],
      [18, 58.3],
      [20, 60.2],
      [22, 62.1],
      [25, 64.6],
      [28, 67.8],
      [29, 69.1],
    ],
  },
  {
    source: "Swiss, Italian and Spanish sizes are C − 40",
    system: "swiss",
    measure: "circumference",
    rounding: 1e-9,
    rows: [
      [1, 41],
      [14, 54],
    ],
  },
  {
    source: "German sizes are diameters",
    system: "german",
    measure: "diameter",
    rounding: 1e-9,
    rows: [
      ["17,2", 17.2],
      [17.25, 17.25],
    ],
  },
];

describe.each(charts)("$system against $source", ({ system, measure, rounding, rows }) => {
  it.each(rows)("size %s is %s mm", (label, value) => {
    const circumference = findSizeSystem(system).circumferenceOf(label);
    const measured = measure === "circumference" ? circumference : circumference / Math.PI;
    expect(Math.abs(measured - value)).toBeLessThan(rounding);
  });
});

it("interpolates between published entries", () => {
  // India 8½ lies midway between 8 → 48.0 and 9 → 48.7; US gauge 7½ between .683 and .716 in.
  expect(findSizeSystem("india").circumferenceOf(8.5)).toBeCloseTo(48.35, 9);
  expect(findSizeSystem("us-gauge").circumferenceOf("7½")).toBeCloseTo(Math.PI * 0.6995 * 25.4, 9);
});
