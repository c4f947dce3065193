/**
 * Germany: the size is the inner diameter in mm.
 */
import { readNumberLabel } from "./number-label.js";
import { scaleSystem } from "./scale.js";

/**
 * Labels are written to 0.1 mm, because the published circumference charts give diameters to 0.1 mm
 * (en.wikipedia.org, Ring size); that is 0.31 mm round, finer than a quarter of a US size. Quarter millimetres,
 * as some sticks have them, are read as they stand. 11 to 26 mm covers the 35 to 80 mm round that `iso` reads.
 */
export const germanSizes = scaleSystem({
  name: "german",
  title: "Germany",
  source: "inner diameter in mm, the second measure there (the usual one, the circumference, is iso)",
  labels: "11 to 26: the inner diameter in mm, 17.2 or 17,2",
  example: "17.2",
  first: 11,
  last: 26,
  steps: 10,
  read: readNumberLabel,
  write: String,
  toCircumference: (place) => Math.PI * place,
  toPlace: (circumference) => circumference / Math.PI,
});
