/**
 * What other published charts say of a size, and the span of them where they disagree.
 */
import { type ChartEntry, valueAt } from "./interpolation.js";

/** Another chart of a system: places on its scale, rising, and circumferences in mm, with where it was published. */
export interface PublishedChart {
  readonly source: string;
  /** Straight lines are drawn between entries; beyond its ends the chart says nothing. */
  readonly entries: readonly ChartEntry[];
}

/** Circumferences nearer than this are one, mm: charts are printed to 0.1 mm. */
const SAME = 0.05;

/**
 * Smallest and largest circumference that charts have at a place, mm; undefined where all agree.
 *
 * @param own what the system itself has there, mm
 */
export function chartSpan(
  own: number,
  place: number,
  charts: readonly PublishedChart[],
): readonly [number, number] | undefined {
  const others = charts
    .filter(({ entries }) => place >= entries[0][0] && place <= entries[entries.length - 1][0])
    .map(({ entries }) => valueAt(entries, place));
  const span = [Math.min(own, ...others), Math.max(own, ...others)] as const;
  return span[1] - span[0] > SAME ? span : undefined;
}
