/**
 * India: a published table of circumferences, straight lines between its entries.
 */
import { type Entry, placeOf, valueAt } from "./interpolation.js";
import { readNumberLabel } from "./number-label.js";
import { scaleSystem } from "./scale.js";

/** Size and circumference in mm (published chart, one credible source; it ends at 28). */
const ENTRIES: readonly Entry[] = [
  [1, 41.0],
  [6, 46.1],
  [10, 50.0],
  [12, 51.9],
  [14, 54.4],
  [16, 56.3],
  [18, 58.3],
  [20, 60.2],
  [22, 62.1],
  [25, 64.6],
  [28, 67.8],
];

/** Labels are whole numbers: common practice, no source. */
export const indiaSizes = scaleSystem({
  name: "india",
  title: "India",
  source: "published chart, interpolated between its eleven entries (one credible source)",
  labels: "1 to 28, in whole numbers by custom",
  example: "14",
  first: 1,
  last: 28,
  steps: 1,
  read: readNumberLabel,
  write: String,
  toCircumference: (place) => valueAt(ENTRIES, place),
  toPlace: (circumference) => placeOf(ENTRIES, circumference),
});
