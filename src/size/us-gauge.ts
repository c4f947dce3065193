/**
 * United States, by the trade gauge: a published table of diameters in inches, straight lines between whole sizes.
 */
import { MM_PER_INCH } from "../base/units.js";
import { type Entry, placeOf, valueAt } from "./interpolation.js";
import { readNumberLabel, writeQuarters } from "./number-label.js";
import { scaleSystem } from "./scale.js";

/** Diameter of sizes 0, 1, 2 … 13, inches (gemsociety.org, Ring Size Comparison Chart). */
const GAUGE_DIAMETERS = [
  0.454, 0.487, 0.52, 0.553, 0.585, 0.618, 0.65, 0.683, 0.716, 0.748, 0.781, 0.814, 0.846, 0.879,
] as const;

/** Size and circumference in mm. */
const ENTRIES: readonly Entry[] = GAUGE_DIAMETERS.map((inches, size) => [size, Math.PI * inches * MM_PER_INCH]);

export const usGaugeSizes = scaleSystem({
  name: "us-gauge",
  title: "US (trade gauge)",
  source: "gauge table in inches, gemsociety.org, Ring Size Comparison Chart (several sources agree)",
  labels: "0 to 13, with quarters: 7, 7¼, 7 1/2, 7.75",
  example: "7½",
  first: 0,
  last: GAUGE_DIAMETERS.length - 1,
  steps: 4,
  read: readNumberLabel,
  write: writeQuarters,
  toCircumference: (place) => valueAt(ENTRIES, place),
  toPlace: (circumference) => placeOf(ENTRIES, circumference),
});
