/**
 * What stones are placed on: the band with its pattern.
 */
import type { Drawing } from "../art/svg/drawing.js";
import type { Band } from "../band/band.js";
import type { Fit } from "../band/fit/fit.js";
import type { BandSurface } from "../band/surface/surface.js";
import type { Warn } from "../base/errors.js";
import type { PatternSpec } from "../design/pattern/pattern.js";

export interface Ground {
  readonly band: Band;
  readonly wrap: BandSurface;
  /** Undefined on a plain band. */
  readonly pattern: PatternSpec | undefined;
  readonly fit: Fit | undefined;
  readonly seatLength: number;
  /** As `seatLengths` where tiles keep their size on a band that tapers, else undefined. */
  readonly lengths: readonly number[] | undefined;
  /** mm from the pattern's ends over which something stands on the seat; undefined where nothing is there. */
  readonly coverStop: number | undefined;
  /** The SVG files that shapes name. */
  readonly drawings: ReadonlyMap<string, Drawing>;
  /** mm. */
  readonly tolerance: number;
  readonly warn: Warn;
}
