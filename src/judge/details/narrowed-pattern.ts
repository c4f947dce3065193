/**
 * A pattern as it measures where a band that tapers is narrowest: flat outlines, shorter along and across.
 */
import type { Band } from "../../band/band.js";
import type { BandSurface } from "../../band/surface/surface.js";
import { TURN } from "../../base/units.js";
import type { Pattern } from "../../pattern/laid-out.js";
import type { FlatBody } from "../../relief/flat-body.js";

export interface NarrowedPattern {
  readonly pattern: Pattern;
  /** θ where it measures so, radians. */
  readonly angle: number;
  /** Shares of the flat lengths along and across. A seat of several curves is taken as narrower all over alike. */
  readonly along: number;
  readonly across: number;
}

/** Undefined where the band is the same all round, and the flat pattern is what it measures. */
export function narrowedPattern(pattern: Pattern, band: Band, wrap: BandSurface): NarrowedPattern | undefined {
  if (wrap.revolved) return undefined;
  const angle = band.looks.reduce((least, one) => (wrap.lineAt(one).length < wrap.lineAt(least).length ? one : least));
  const line = wrap.lineAt(angle);
  const [along, across] = [line.point(0, 0)[1] / wrap.referenceRadius, line.length / wrap.seatLength];
  const narrow = (body: FlatBody): FlatBody => ({
    ...body,
    outline: body.outline.map((polygon) => polygon.map((ring) => ring.map(([u, v, h]) => [u * along, v * across, h]))),
    seam: body.seam && [body.seam[0] * along, body.seam[1] * along],
    period: body.period === undefined ? undefined : body.period * along,
  });
  return { pattern: { ...pattern, bodies: pattern.bodies.map(narrow) }, angle, along, across };
}

/** Where a place of the narrowed pattern lies on the flat one, in the tile that is nearest to where it measures so. */
export function flatPlace(
  [u, v]: readonly [number, number],
  { pattern, angle, along, across }: NarrowedPattern,
  wrap: BandSurface,
): readonly [u: number, v: number] {
  const unit = wrap.round / pattern.repeats;
  const home = u / along;
  const wanted = wrap.uAt(angle - TURN * Math.floor((angle - wrap.startAngle) / TURN));
  return [home + unit * Math.round((wanted - home) / unit), v / across];
}
