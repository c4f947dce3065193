/**
 * Switzerland, Italy, Spain: the circumference in mm less 40.
 */
import { readNumberLabel } from "./number-label.js";
import { scaleSystem } from "./scale.js";

/** Circumference of size 0, mm (one credible source). */
const ZERO_CIRCUMFERENCE = 40;

/** Labels are whole numbers, the ISO stick's millimetres less 40: common practice, no source. */
export const swissSizes = scaleSystem({
  name: "swiss",
  title: "Switzerland, Italy, Spain",
  source: "C − 40 mm (one credible source)",
  labels: "0 to 40: the inner circumference in mm less 40",
  example: "14",
  first: 0,
  last: 40,
  steps: 1,
  read: readNumberLabel,
  write: String,
  toCircumference: (place) => ZERO_CIRCUMFERENCE + place,
  toPlace: (circumference) => circumference - ZERO_CIRCUMFERENCE,
});
