/**
 * United States, by the trade gauge: a published table of diameters in inches, straight lines between whole sizes.
 */
import { placeOf, valueAt } from "./interpolation.js";
import { readNumberLabel, writeQuarters } from "./number-label.js";
import { scaleSystem } from "./scale.js";
import { formulaCircumference, GAUGE } from "./us-tables.js";

export const usGaugeSizes = scaleSystem({
  name: "us-gauge",
  title: "US (trade gauge)",
  source: "gauge table in inches, gemsociety.org, Ring Size Comparison Chart (several sources agree)",
  labels: "0 to 13, with quarters: 7¼, 7 1/2, 7.75",
  example: "7½",
  first: 0,
  last: GAUGE.length - 1,
  steps: 4,
  read: readNumberLabel,
  write: writeQuarters,
  toCircumference: (place) => valueAt(GAUGE, place),
  toPlace: (circumference) => placeOf(GAUGE, circumference),
  charts: [
    {
      source: "formula, en.wikipedia.org, Ring size",
      entries: GAUGE.map(([size]) => [size, formulaCircumference(size)] as const),
    },
  ],
});
