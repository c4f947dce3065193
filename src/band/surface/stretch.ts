/**
 * The stretch report: how much longer or shorter the wrapped art is along the band than the flat art.
 *
 * λu = (r(v) + h · n_r(v)) / R; across the band it is 1 on the seat. Flat art is truthful where λu is near 1. On a band that
 * tapers both change round the finger, and the slope of the surface's line adds to λu.
 */
import { extent } from "../../base/math/extent.js";
import { TOP } from "../../base/units.js";
import type { BandSurface, LocalStretch } from "./surface.js";

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
  /** On the seat's middle line, the crown of a domed band, and at the relief's top over it; at the top of the ring. */
  readonly crown: number;
  readonly topCrown: number;
  /** How much longer or shorter it is across the band than flat; only on a band that tapers, else it is 1. */
  readonly across?: StretchRange;
}

/** Places across the seat at which λu is taken: r(v) is smooth, so its extremes lie within a 200th of the seat. */
const PLACES = 200;

/** Places round a band that tapers: its sizes change smoothly, so extremes lie within a 1000th of what they are. */
const COLUMNS = 48;

/** Places across it: its extremes lie at its edges and in its middle, which are among them. */
const TAPERED_PLACES = 40;

/** @param reliefHeight mm above the seat, 0 or more */
export function measureStretch(wrap: BandSurface, reliefHeight: number): StretchReport {
  const columns = wrap.revolved ? [0] : Array.from({ length: COLUMNS }, (_, i) => (wrap.round * i) / COLUMNS);
  const places = wrap.revolved ? PLACES : TAPERED_PLACES;
  const rows = Array.from({ length: places + 1 }, (_, i) => i / places - 0.5);
  const over = (which: readonly number[], h: number, side: keyof LocalStretch = "along"): StretchRange => {
    const [min, max] = extent(
      columns.flatMap((u) => {
        const across = 2 * wrap.lineAt(wrap.angleAt(u)).reach;
        return which.map((share) => wrap.stretchAt(u, across * share, h)[side]);
      }),
    );
    return { min, max };
  };
  const top = wrap.uAt(TOP);
  const report = {
    seat: over(rows, 0),
    top: over(rows, reliefHeight),
    edge: over([-0.5, 0.5], 0),
    crown: wrap.stretchAt(top, 0, 0).along,
    topCrown: wrap.stretchAt(top, 0, reliefHeight).along,
  };
  return wrap.revolved ? report : { ...report, across: over(rows, 0, "across") };
}
