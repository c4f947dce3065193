import fc from "fast-check";
import { expect, it } from "vitest";
import { sizeSystems } from "../../src/size/catalogue.js";
import { sizeTable } from "../../src/size/size-table.js";

const SEED = 20261125;

it("lays one bore side by side in every system", () => {
  const rows = sizeTable(54);
  expect(rows.map((row) => [row.system, row.label])).toEqual([
    ["iso", "54"],
    ["us", "6¾"],
    ["us-gauge", "6¾"],
    ["uk", "N¼"],
    ["japan", "14"],
    // 54 − 40.
    ["swiss", "14"],
    // 54 / π = 17.19.
    ["german", "17.2"],
    ["india", "14"],
  ]);
  // UK N¼ is 36.25 + 1.25 × 14.25 = 54.0625 mm round.
  expect(rows[3].difference).toBeCloseTo(0.0625, 12);
  expect(rows[3].title).toBe("UK, Ireland, Australia");
});

it("adds up: the label's circumference is the bore plus the difference, and π diameters", () => {
  fc.assert(
    fc.property(fc.double({ min: 45, max: 65, noNaN: true }), (circumference) => {
      for (const row of sizeTable(circumference)) {
        expect(row.circumference).toBeCloseTo(circumference + (row.difference ?? Number.NaN), 9);
        expect((row.diameter ?? Number.NaN) * Math.PI).toBeCloseTo(row.circumference ?? Number.NaN, 9);
        // No system's step is longer than 1.3 mm round (UK quarter 0.31, Indian whole size up to 1.25).
        expect(Math.abs(row.difference ?? Number.NaN)).toBeLessThan(0.65);
      }
    }),
    { seed: SEED },
  );
});

it("leaves a row empty where a system does not reach", () => {
  const rows = sizeTable(100);
  expect(rows).toHaveLength(sizeSystems.length);
  for (const row of rows) {
    expect([row.label, row.circumference, row.diameter, row.difference]).toEqual(Array(4).fill(undefined));
  }
});

it.each([0, 15, 200, Number.NaN])("refuses %s mm", (circumference) => {
  expect(() => sizeTable(circumference)).toThrow(expect.objectContaining({ code: "size-out-of-range" }));
});
