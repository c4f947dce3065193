/**
 * Fits a pattern to a band: the solver of pattern/fit.ts on the band's real cross-section.
 */

import type { Warn, Warning } from "../../base/errors.js";
import { showLength } from "../../base/units.js";
import type { Work } from "../../base/work.js";
import { severalLanes } from "../../design/lanes.js";
import { PATTERN_DEFAULTS } from "../../design/pattern/defaults.js";
import type { PatternSpec } from "../../design/pattern/pattern.js";
import type { ProfileSpec } from "../../design/profile/profile.js";
import { meanSeatRadius } from "../profile/moments.js";
import { buildOutline } from "../profile/profile.js";
import { type Fit, type LaneFit, type MeasureSeat, type SeatMeasure, STRETCH_LIMIT, solveFit } from "./fit.js";
import { solveLanes } from "./fit-lanes.js";

export interface FitBandOptions {
  readonly profile: ProfileSpec;
  /** mm */
  readonly boreRadius: number;
  /** mm, for free curves of the profile. */
  readonly tolerance: number;
  readonly warn?: Warn;
  /** Ends a search that takes too long. */
  readonly work?: Pick<Work, "requireTime">;
}

/**
 * Solves the fit; warns of a band width that it had to change and of a tile stretched beyond notice, where that shows.
 * Undefined where there is no pattern to fit.
 */
export function fitBand(
  pattern: FitPattern | undefined,
  { profile, boreRadius, tolerance, warn, work }: FitBandOptions,
): Fit | undefined {
  if (pattern === undefined) return undefined;
  const measured = new Map<number, SeatMeasure>();
  const fit = solve(pattern, profile.width, (width) => {
    work?.requireTime("profile");
    const known = measured.get(width);
    if (known !== undefined) return known;
    const outline = buildOutline({ ...profile, width }, boreRadius, tolerance);
    const seat = { seatLength: outline.seatLength, meanRadius: meanSeatRadius(outline) };
    measured.set(width, seat);
    return seat;
  });
  const fits = fit.lanes.length > 0 ? fit.lanes : [{ ...fit, name: "" }];
  if (Math.abs(fit.bandWidth - profile.width) > WIDTH_NOTICE) {
    const tiles = fits.map(({ repeats }) => repeats).join(" + ");
    warn?.({
      code: "width-fitted",
      message: `the band is ${showLength(fit.bandWidth)} wide instead of ${showLength(profile.width)}, so that ${tiles} tiles fit`,
      path: "profile.width",
      value: { drawn: profile.width, built: fit.bandWidth },
      hint: 'see `annulet fit` for other numbers of repeats, or say "hold": "band" to keep the width',
    });
  }
  const { heightLanes = [] } = pattern;
  for (const one of fits) {
    if (Math.abs(one.aspectError) > STRETCH_LIMIT && !heightLanes.includes(one.name)) warn?.(stretched(one));
  }
  return fit;
}

/** What of a pattern its fit depends on. */
export type FitPattern = Pick<PatternSpec, "fit" | "cover"> &
  Partial<Pick<PatternSpec, "cycle" | "medallion" | "lanes" | "gap">> & {
    /** Names of the lanes whose tiles may be stretched, since nothing in them shows it. Default none. */
    readonly heightLanes?: readonly string[];
    /** As in `FitAsk`, where there are no lanes. */
    readonly reach?: number;
  };

function solve(pattern: FitPattern, drawnWidth: number, measure: MeasureSeat): Fit {
  const { fit, cover, cycle, medallion, lanes, reach, gap = PATTERN_DEFAULTS.gap } = pattern;
  if (lanes === undefined)
    return solveFit({ ...fit, cycle, medallion: medallion?.tiles, reach }, cover, drawnWidth, measure);
  const asks = severalLanes({ fit, lanes }).map(({ name, share, where, ...lane }) => {
    return { ...lane.fit, name, share, path: where, cycle: lane.cycle, medallion: lane.medallion?.tiles };
  });
  return solveLanes(asks, { cover, gap, drawnWidth }, measure);
}

function stretched({ name, aspectError }: Pick<LaneFit, "name" | "aspectError">): Warning {
  return {
    code: "tile-stretched",
    message: `the tile${name === "" ? "" : ` of ${name}`} is stretched across the band by ${(100 * aspectError).toFixed(1)} %`,
    path: "pattern.fit.hold",
    value: aspectError,
    allowed: `within ±${100 * STRETCH_LIMIT} %`,
    hint: 'choose other repeats, another band width, or "hold": "tile"',
  };
}

/** A change of width below this is not worth a word, mm: under what is printed. */
const WIDTH_NOTICE = 5e-4;
