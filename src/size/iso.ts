/**
 * ISO 8653: the size is the inner circumference in mm of the largest cylinder that fits the ring.
 */
import { readNumberLabel } from "./number-label.js";
import { scaleSystem } from "./scale.js";

/** `ISO 8653-54`, with or without the standard's year. */
const DESIGNATION = /^iso\s*8653(?::\d{4})?\s*-\s*(\d+)$/i;

/**
 * Labels are written to whole mm, as the standard's designation is. The standard's gauge stick runs from 41 to 76;
 * 35 to 80 is read, without a warning, because children's and large rings are made beyond the stick.
 */
export const isoSizes = scaleSystem({
  name: "iso",
  title: "ISO 8653",
  source: "ISO 8653:1986 and 2016 (a standard)",
  labels: "the inner circumference in mm, 35 to 80, or ISO 8653-54",
  example: "54",
  first: 35,
  last: 80,
  steps: 1,
  read: (label) => readNumberLabel(typeof label === "string" ? label.trim().replace(DESIGNATION, "$1") : label),
  write: String,
  toCircumference: (place) => place,
  toPlace: (circumference) => circumference,
});
