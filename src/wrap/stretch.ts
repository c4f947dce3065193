/**
 * The stretch report: how much longer or shorter the wrapped art is along the band than the flat art.
 *
 * λu = (r(v) + h · n_r(v)) / R; across the band it is 1 on the seat. Flat art is truthful where λu is near 1.
 */
import type { Wrap } from "./wrap.js";

/** Smallest and largest λu over the seat's width. */
export interface StretchRange {
  readonly min: number;
  readonly max: number;
}

export interface StretchReport {
  /** On the seat itself. */
  readonly seat: StretchRange;
  /** At the relief's top. */
  readonly top: StretchRange;
}

/** Places across the seat at which λu is taken: r(v) is smooth, so its extremes lie within a 200th of the seat. */
const PLACES = 200;

/** @param reliefHeight mm above the seat, 0 or more */
export function measureStretch(wrap: Wrap, reliefHeight: number): StretchReport {
  return { seat: rangeAt(wrap, 0), top: rangeAt(wrap, reliefHeight) };
}

function rangeAt(wrap: Wrap, h: number): StretchRange {
  let [min, max] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i <= PLACES; i++) {
    const [, r] = wrap.section(wrap.seatLength * (i / PLACES - 0.5), h);
    min = Math.min(min, r / wrap.referenceRadius);
    max = Math.max(max, r / wrap.referenceRadius);
  }
  return { min, max };
}
