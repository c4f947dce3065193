/**
 * What comes before all art: size → fit.
 */
import type { Fit } from "../../band/fit/fit.js";
import { type FitPattern, fitBand } from "../../band/fit/fit-band.js";
import { heightLanes } from "../../design/height-lanes.js";
import type { PatternSpec } from "../../design/pattern/pattern.js";
import { type ResolvedSize, resolveSize } from "../../size/size.js";
import type { From, OfDesign } from "../answers.js";
import type { Tools } from "../stage.js";

export function size({ design }: OfDesign<"size">): ResolvedSize {
  return resolveSize(design.size);
}

/** What of a pattern its fit depends on: no art. */
export function fitPattern({ design: { pattern, beads } }: OfDesign<"pattern" | "beads">): FitPattern | undefined {
  if (pattern === undefined) return undefined;
  const { fit, cover, cycle, gap, lanes } = pattern;
  const bare = (medallion: PatternSpec["medallion"]) => medallion && { ...medallion, regions: [] };
  return {
    heightLanes: heightLanes(pattern, beads),
    fit,
    cover,
    cycle,
    gap,
    medallion: bare(pattern.medallion),
    lanes: lanes?.map((lane) => ({ ...lane, regions: [], medallion: bare(lane.medallion), ends: undefined })),
  };
}

export function fit(
  { design, boreRadius, fitPattern }: OfDesign<"profile" | "tolerance"> & From<"boreRadius" | "fitPattern">,
  { warn, work }: Pick<Tools, "warn" | "work">,
): Fit | undefined {
  return fitBand(fitPattern, { profile: design.profile, tolerance: design.tolerance, boreRadius, warn, work });
}
