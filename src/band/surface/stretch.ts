/**
 * The stretch report: how much longer or shorter the wrapped art is along the band than the flat art.
 *
 * λu = (r(v) + h · n_r(v)) / R; across the band it is 1 on the seat. Flat art is truthful where λu is near 1.
 */
import type { BandSurface } from "./surface.js";

/** Smallest and largest λu over the seat's width. */
export interface StretchRange {
  readonly min: number;
  readonly max: number;
}

/** By how much flat art gets longer or shorter on the band, at the seat and at the top of the relief. */
export interface StretchReport {
  /** On the seat itself. */
  readonly seat: StretchRange;
  /** At the relief's top. */
  readonly top: StretchRange;
  /** At the seat's two edges: a channel's floor beside its rails. */
  readonly edge: StretchRange;
  /** On the seat's middle line, the crown of a domed band, and at the relief's top over it. */
  readonly crown: number;
  readonly topCrown: number;
}

/** Places across the seat at which λu is taken: r(v) is smooth, so its extremes lie within a 200th of the seat. */
const PLACES = 200;

/** @param reliefHeight mm above the seat, 0 or more */
export function measureStretch(wrap: BandSurface, reliefHeight: number): StretchReport {
  const half = wrap.seatLength / 2;
  const edges = [stretchAt(wrap, -half, 0), stretchAt(wrap, half, 0)];
  return {
    seat: rangeAt(wrap, 0),
    top: rangeAt(wrap, reliefHeight),
    edge: { min: Math.min(...edges), max: Math.max(...edges) },
    crown: stretchAt(wrap, 0, 0),
    topCrown: stretchAt(wrap, 0, reliefHeight),
  };
}

/** λu at a place v, mm from the seat's middle, and a height, mm above the seat. */
function stretchAt(wrap: BandSurface, v: number, h: number): number {
  return wrap.stretchAt(0, v, h).along;
}

function rangeAt(wrap: BandSurface, h: number): StretchRange {
  let [min, max] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i <= PLACES; i++) {
    const stretch = stretchAt(wrap, wrap.seatLength * (i / PLACES - 0.5), h);
    min = Math.min(min, stretch);
    max = Math.max(max, stretch);
  }
  return { min, max };
}
