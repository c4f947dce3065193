/**
 * Fits a pattern to a band: the solver of pattern/fit.ts on the band's real cross-section.
 */
import type { Warn } from "../errors.js";
import { type Fit, STRETCH_LIMIT, solveFit } from "../pattern/fit.js";
import type { PatternSpec } from "../pattern/schema.js";
import { meanSeatRadius } from "../profile/moments.js";
import { buildOutline, type ProfileSpec } from "../profile/profile.js";
import { showLength } from "../units.js";

export interface FitBandOptions {
  readonly profile: ProfileSpec;
  /** mm */
  readonly boreRadius: number;
  /** mm, for free curves of the profile. */
  readonly tolerance: number;
  readonly warn?: Warn;
}

/**
 * Solves the fit; warns of a band width that it had to change and of a tile stretched beyond notice.
 * Undefined where there is no pattern to fit.
 */
export function fitBand(
  pattern: (Pick<PatternSpec, "fit" | "cover"> & Partial<Pick<PatternSpec, "cycle" | "medallion">>) | undefined,
  { profile, boreRadius, tolerance, warn }: FitBandOptions,
): Fit | undefined {
  if (pattern === undefined) return undefined;
  const fit = solveFit(
    { ...pattern.fit, cycle: pattern.cycle, medallion: pattern.medallion?.tiles },
    pattern.cover,
    profile.width,
    (width) => {
      const outline = buildOutline({ ...profile, width }, boreRadius, tolerance);
      return { seatLength: outline.seatLength, meanRadius: meanSeatRadius(outline) };
    },
  );
  if (Math.abs(fit.bandWidth - profile.width) > WIDTH_NOTICE) {
    warn?.({
      code: "width-fitted",
      message: `the band is ${showLength(fit.bandWidth)} wide instead of ${showLength(profile.width)}, so that ${fit.repeats} tiles fit`,
      path: "profile.width",
      value: { drawn: profile.width, built: fit.bandWidth },
      hint: 'see `annulet fit` for other numbers of repeats, or say "hold": "band" to keep the width',
    });
  }
  if (Math.abs(fit.aspectError) > STRETCH_LIMIT) {
    warn?.({
      code: "tile-stretched",
      message: `the tile is stretched across the band by ${(100 * fit.aspectError).toFixed(1)} %`,
      path: "pattern.fit.hold",
      value: fit.aspectError,
      allowed: `within ±${100 * STRETCH_LIMIT} %`,
      hint: 'choose other repeats, another band width, or "hold": "tile"',
    });
  }
  return fit;
}

/** A change of width below this is not worth a word, mm: under what is printed. */
const WIDTH_NOTICE = 5e-4;
