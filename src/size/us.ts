/**
 * United States and Canada, by formula: D = 0.458 in + 0.032 in × n.
 */
import { readNumberLabel, writeQuarters } from "./number-label.js";
import { scaleSystem } from "./scale.js";
import { formulaCircumference, GAUGE, SIZE_STEP, ZERO_DIAMETER } from "./us-tables.js";

/**
 * The US has no single dimensional standard; `us-gauge` is the other table in use.
 * That sizes end at 16 is from memory.
 */
export const usSizes = scaleSystem({
  name: "us",
  title: "US, Canada (formula)",
  source: "D = 0.458 in + 0.032 in × n, en.wikipedia.org, Ring size (several sources agree; no national standard)",
  labels: "0 to 16, with quarters: 7¼, 7 1/2, 7.75",
  example: "7½",
  first: 0,
  last: 16,
  steps: 4,
  read: readNumberLabel,
  write: writeQuarters,
  toCircumference: formulaCircumference,
  toPlace: (circumference) => (circumference / Math.PI - ZERO_DIAMETER) / SIZE_STEP,
  charts: [{ source: "gemsociety.org, Ring Size Comparison Chart", entries: GAUGE }],
});
