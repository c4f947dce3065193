/**
 * Japan, the customary number: D = 13 + (n − 1) / 3 mm.
 * JIS S 4700:1998 equals ISO 8653:1986 and so counts in circumference: its sizes are `iso`.
 */
import { readNumberLabel } from "./number-label.js";
import { scaleSystem } from "./scale.js";

/** Diameter of number 1, mm (published charts: 1 → 13.0, 7 → 15.0, 13 → 17.0). */
const FIRST_DIAMETER = 13;

/** Whole numbers to a millimetre of diameter (same charts). */
const NUMBERS_PER_MM = 3;

/** Labels are whole numbers: common practice, no source. The upper end, 30, is from memory. */
export const japanSizes = scaleSystem({
  name: "japan",
  title: "Japan (customary number)",
  source: "D = 13 + (n − 1) / 3 mm, the number in use (several charts agree; JIS S 4700 itself is the iso system)",
  labels: "1 to 30, whole numbers by custom",
  example: "13",
  first: 1,
  last: 30,
  steps: 1,
  read: readNumberLabel,
  write: String,
  toCircumference: (place) => Math.PI * (FIRST_DIAMETER + (place - 1) / NUMBERS_PER_MM),
  toPlace: (circumference) => (circumference / Math.PI - FIRST_DIAMETER) * NUMBERS_PER_MM + 1,
});
