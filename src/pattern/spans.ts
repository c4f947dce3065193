/**
 * Where a pattern's spans of tiles and its medallion lie round the band.
 *
 * The medallion's middle is the middle of what is covered, the top of the ring. A pattern that goes all the way round then
 * begins beside it and ends on its other side; one that stops is parted in two like spans.
 */
import { type Fit, FULL_COVER } from "../band/fit/fit.js";
import type { StripFit } from "../flat/strip.js";

export interface Spans {
  /** One span: all tiles where the pattern goes all the way round. */
  readonly fit: StripFit;
  /** u at which each span begins, mm. */
  readonly starts: readonly number[];
  /** The medallion as one tile, and u at which it begins, mm. */
  readonly medallion: { readonly fit: StripFit; readonly start: number } | undefined;
}

/** Lays out the spans of a fit. */
export function spansOf(fit: Omit<Fit, "lanes">): Spans {
  const { repeats, medallion: wide, tileWidth, cover } = fit;
  if (wide === 0) return { fit, starts: [0], medallion: undefined };
  const start = ((repeats - wide) / 2) * tileWidth;
  const after = start + wide * tileWidth;
  const tiles = cover === FULL_COVER ? repeats - wide : (repeats - wide) / 2;
  const cycle = fit.cycle === repeats ? tiles : fit.cycle;
  return {
    fit: { ...fit, repeats: tiles, cycle, cover: (cover * tiles) / repeats },
    starts: cover === FULL_COVER ? [after] : [0, after],
    medallion: { fit: oneTile(fit, wide), start },
  };
}

/** A tile of its own that is some tiles wide and as high as all rows. */
export function oneTile({ tileWidth, tileHeight, rows, aspect, cover, repeats }: StripFit, wide: number): StripFit {
  return {
    tileWidth: wide * tileWidth,
    tileHeight: rows * tileHeight,
    aspect: (rows * aspect) / wide,
    rows: 1,
    repeats: 1,
    cycle: 1,
    cover: (cover * wide) / (repeats + wide),
  };
}
