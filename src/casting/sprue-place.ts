/**
 * Where a sprue stands on the band: how high its root is, and how deep its foot may reach so that all of it ends in metal.
 *
 * Its axis points straight out from the finger's axis. A point of the foot's rim that lies s beside the axis, round the
 * band, meets the outside of radius r at the height √(r² − s²) along it.
 *
 * The flare begins a little below the band's highest place, so that its thin rim crosses the surface; on a domed or narrow
 * band the rim's far side stands as a small straight step over the surface that falls away.
 */

import { LEAST_WALL } from "../band/profile/least-sizes.js";
import { AnnuletError } from "../base/errors.js";
import type { Point2 } from "../base/math/point.js";
import { showLength } from "../base/units.js";

export interface SprueSeat {
  /** Distance from the finger's axis to the highest part of the outside under the sprue, mm. */
  readonly root: number;
  /** Distance from the finger's axis to the foot's flat end, mm: half way between the bore and the lowest outside. */
  readonly foot: number;
}

/** Places across the band at which the outside is looked at, on each side of the sprue's middle. */
const PLACES = 64;

/** Bisections for the widest sprue that would stand: to a thousandth of a millimetre and below. */
const HALVINGS = 14;

/**
 * @param polyline the band's cross-section in (w, r)
 * @param across where the sprue's middle stands, w, mm
 * @param reach radius of what it covers, mm
 * @throws AnnuletError `sprue-too-wide` with the widest that would stand there
 */
export function sprueSeat(polyline: readonly Point2[], across: number, reach: number): SprueSeat {
  const seat = seatFor(polyline, across, reach);
  if (seat !== undefined) return seat;
  let [fits, wide] = [0, reach];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (fits + wide) / 2;
    if (seatFor(polyline, across, middle) === undefined) wide = middle;
    else fits = middle;
  }
  const none = fits === 0;
  throw new AnnuletError({
    code: "sprue-too-wide",
    message: `the sprue covers ${showLength(2 * reach)} across, fillet included, and the band does not carry that here`,
    path: none ? "sprue.across" : "sprue.diameter",
    value: none ? across : 2 * reach,
    allowed: none
      ? "a place with metal under it"
      : `diameter and twice the fillet together up to ${showLength(Math.floor(2000 * fits) / 1000)}`,
    hint: "make it thinner, its fillet smaller, or move it towards the band's middle",
  });
}

/** Undefined where some of the rim has no metal under it, or too little. */
function seatFor(polyline: readonly Point2[], across: number, reach: number): SprueSeat | undefined {
  const wide = Array.from({ length: 2 * PLACES + 1 }, (_, i) => across + (reach * (i - PLACES)) / PLACES);
  const corners = polyline.map(([w]) => w).filter((w) => Math.abs(w - across) < reach);
  let [root, lowest, bore] = [0, Number.POSITIVE_INFINITY, 0];
  for (const w of [...wide, ...corners]) {
    const [inner, outer] = radiiAt(polyline, w);
    const beside = reach ** 2 - (w - across) ** 2;
    if (outer ** 2 <= beside) return undefined;
    root = Math.max(root, outer);
    bore = Math.max(bore, inner);
    lowest = Math.min(lowest, Math.sqrt(outer ** 2 - Math.max(0, beside)));
  }
  return lowest - bore >= 2 * LEAST_WALL ? { root, foot: (lowest + bore) / 2 } : undefined;
}

/** Radii of the bore and of the outside at w; of the outside 0 where the band has ended. */
function radiiAt(polyline: readonly Point2[], w: number): readonly [number, number] {
  let [inner, outer] = [Number.POSITIVE_INFINITY, 0];
  polyline.forEach(([aw, ar], i) => {
    const [bw, br] = polyline[(i + 1) % polyline.length];
    if (w < Math.min(aw, bw) || w > Math.max(aw, bw)) return;
    const ends = aw === bw ? [ar, br] : [ar + ((br - ar) * (w - aw)) / (bw - aw)];
    inner = Math.min(inner, ...ends);
    outer = Math.max(outer, ...ends);
  });
  return [inner, outer];
}
