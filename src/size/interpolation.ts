/**
 * Straight-line interpolation in a published table, both ways.
 */

/** A table's entry: place on the scale, and the published value in mm. */
export type ChartEntry = readonly [place: number, value: number];

/** The value at a place; beyond the table's ends the outermost span goes on. Entries rise in both columns. */
export function valueAt(entries: readonly ChartEntry[], place: number): number {
  return interpolate(entries, place, 0, 1);
}

/** The place of a value: the inverse of `valueAt`. */
export function placeOf(entries: readonly ChartEntry[], value: number): number {
  return interpolate(entries, value, 1, 0);
}

function interpolate(entries: readonly ChartEntry[], x: number, from: 0 | 1, to: 0 | 1): number {
  let i = 1;
  while (i < entries.length - 1 && x > entries[i][from]) i++;
  const [a, b] = [entries[i - 1], entries[i]];
  if (x === b[from]) return b[to];
  return a[to] + ((x - a[from]) / (b[from] - a[from])) * (b[to] - a[to]);
}
