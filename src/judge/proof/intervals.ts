/**
 * Sets of intervals on a line: a flat list of ends that rise, each interval its start and then its end.
 */

/** Ends, rising, two to an interval. */
export type Intervals = readonly number[];

/** All that lies in either. */
export function unite(a: Intervals, b: Intervals): Intervals {
  return sweep(a, b, (inA, inB) => inA || inB);
}

/** What lies in both. */
export function intersect(a: Intervals, b: Intervals): Intervals {
  return sweep(a, b, (inA, inB) => inA && inB);
}

/** What lies in `a` and not in `b`. */
export function without(a: Intervals, b: Intervals): Intervals {
  return sweep(a, b, (inA, inB) => inA && !inB);
}

/** A set with one more interval. */
export function withOne(set: Intervals, from: number, to: number): Intervals {
  if (to <= from) return set;
  const found: number[] = [];
  let [low, high] = [from, to];
  let i = 0;
  for (; i < set.length && set[i + 1] < low; i += 2) found.push(set[i], set[i + 1]);
  for (; i < set.length && set[i] <= high; i += 2) {
    low = Math.min(low, set[i]);
    high = Math.max(high, set[i + 1]);
  }
  found.push(low, high);
  for (; i < set.length; i += 2) found.push(set[i], set[i + 1]);
  return found;
}

/** A set less one interval. */
export function lessOne(set: Intervals, from: number, to: number): Intervals {
  if (to <= from) return set;
  const found: number[] = [];
  for (let i = 0; i < set.length; i += 2) {
    if (set[i] < from) found.push(set[i], Math.min(set[i + 1], from));
    if (set[i + 1] > to) found.push(Math.max(set[i], to), set[i + 1]);
  }
  return found;
}

/** Length of the longest interval; 0 where there is none. */
export function longest(set: Intervals): number {
  let most = 0;
  for (let i = 0; i < set.length; i += 2) most = Math.max(most, set[i + 1] - set[i]);
  return most;
}

/** Whether a place lies in an interval. */
export function holds(set: Intervals, place: number): boolean {
  for (let i = 0; i < set.length; i += 2) if (set[i] <= place && place <= set[i + 1]) return true;
  return false;
}

/** One interval; nothing where it would end before it starts. */
export function interval(from: number, to: number): Intervals {
  return to > from ? [from, to] : [];
}

/** Both lists' ends in order, kept where what `keeps` says of them changes. */
function sweep(a: Intervals, b: Intervals, keeps: (inA: boolean, inB: boolean) => boolean): Intervals {
  const found: number[] = [];
  let [i, j] = [0, 0];
  let kept = false;
  while (i < a.length || j < b.length) {
    const at = Math.min(i < a.length ? a[i] : Infinity, j < b.length ? b[j] : Infinity);
    while (i < a.length && a[i] === at) i++;
    while (j < b.length && b[j] === at) j++;
    const now = keeps(i % 2 === 1, j % 2 === 1);
    if (now === kept) continue;
    found.push(at);
    kept = now;
  }
  return found;
}
