/**
 * India: a published table of circumferences, straight lines between its entries.
 */
import { type ChartEntry, placeOf, valueAt } from "./interpolation.js";
import { readNumberLabel } from "./number-label.js";
import { scaleSystem } from "./scale.js";

/** Circumferences of sizes 1 to 30, mm (duhafinejewellery.com). */
const CIRCUMFERENCES = [
  41.0, 41.7, 42.9, 44.1, 44.8, 46.1, 47.4, 48.0, 48.7, 50.0, 51.2, 51.9, 53.1, 54.4, 55.1, 56.3, 57.0, 58.3, 58.9,
  60.2, 60.8, 62.1, 62.7, 64.0, 64.6, 65.9, 67.2, 67.8, 69.1, 69.7,
] as const;

/** Size and circumference in mm. */
const ENTRIES: readonly ChartEntry[] = CIRCUMFERENCES.map((circumference, i) => [i + 1, circumference]);

/** Sizes that ellistonjewelry.in has otherwise, mm; the other 27 agree. */
const OTHERWISE: ReadonlyMap<number, number> = new Map([
  [2, 42.7],
  [4, 43.6],
  [30, 71.0],
]);

/** Labels are whole numbers: common practice, no source. */
export const indiaSizes = scaleSystem({
  name: "india",
  title: "India",
  source: "chart of duhafinejewellery.com; ellistonjewelry.in agrees in 27 of its 30 sizes",
  labels: "1 to 30, whole numbers by custom",
  example: "14",
  first: 1,
  last: ENTRIES.length,
  steps: 1,
  read: readNumberLabel,
  write: String,
  toCircumference: (place) => valueAt(ENTRIES, place),
  toPlace: (circumference) => placeOf(ENTRIES, circumference),
  charts: [
    {
      source: "ellistonjewelry.in",
      entries: ENTRIES.map(([size, circumference]) => [size, OTHERWISE.get(size) ?? circumference] as const),
    },
  ],
});
