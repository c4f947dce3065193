/**
 * A band that narrows or thins towards its back.
 */
import { chordCount, divideSegment } from "../base/math/curve.js";
import type { Point2 } from "../base/math/point.js";
import { remembered } from "../base/math/remembered.js";
import { TOP, TURN } from "../base/units.js";
import type { ProfileSpec } from "../design/profile/profile.js";
import type { Band, Bend } from "./band.js";
import type { ExactProfile } from "./profile/outline.js";
import { flattenProfile, type Profile, requireSimple } from "./profile/profile.js";
import type { Taper } from "./taper.js";
import { taperedSections } from "./tapered-sections.js";

/** Angles at which a sign of the whole round is looked for, as many from the top to the back on either side. */
const LOOKS = 48;

/** Angles at which the bend is measured: sizes change smoothly, so it is within a 100th of its most. */
const BENDS = 96;

/** Sections that are kept: as many as facets go round and tiles ask for. */
const KEPT = 4096;

/** @throws AnnuletError as `taperedSections`, and `profile-crosses-itself` */
export function taperedBand(spec: ProfileSpec, taper: Taper, boreRadius: number, tolerance: number): Band {
  const { rows, sectionAt: exactAt, seatAt } = taperedSections(spec, taper, boreRadius, tolerance);
  const chords = mostChords(rows, tolerance);
  const sectionAt = remembered(
    KEPT,
    (angle: number): Profile => flattenProfile(exactAt(angle), (segment, i) => divideSegment(segment, chords[i])),
  );
  const looks = Array.from({ length: LOOKS }, (_, i) => TOP + (TURN * i) / LOOKS);
  for (const angle of looks) requireSimple(sectionAt(angle));
  return {
    ...sectionAt(TOP),
    revolved: false,
    sectionAt,
    looks: [...looks, ...taper.given],
    bend: bendOf((angle) => sectionAt(angle).polyline),
    seatAt: remembered(KEPT, seatAt),
    sizesAt: taper.sizesAt,
  };
}

/** For each curve of the section how many chords it takes where it takes most. */
function mostChords(rows: readonly ExactProfile[], tolerance: number): number[] {
  return rows[0].outline.map((_, i) =>
    rows.reduce((most, { outline: { [i]: segment } }) => {
      return segment.kind === "line" ? 1 : Math.max(most, chordCount(segment.radius, segment.sweep, tolerance));
    }, 1),
  );
}

/**
 * Second differences of every corner's way round: X = (r cos θ, r sin θ, w) bends by (r″ − r, w″) out of its own direction.
 * An edge whose ends move by D against each other, out of the plane of edge and way, twists by that.
 */
function bendOf(polylineAt: (angle: number) => readonly Point2[]): Bend {
  const step = TURN / BENDS;
  let [radius, twist] = [0, 0];
  for (let k = 0; k < BENDS; k++) {
    const [before, here, after] = [-1, 0, 1].map((side) => polylineAt(TOP + (k + side) * step));
    const slopes = here.map((_, i): Point2 => {
      return [(after[i][0] - before[i][0]) / (2 * step), (after[i][1] - before[i][1]) / (2 * step)];
    });
    here.forEach(([w, r], i) => {
      const [w2, r2] = [0, 1].map((axis) => (after[i][axis] - 2 * here[i][axis] + before[i][axis]) / step ** 2);
      radius = Math.max(radius, Math.hypot(r2 - r, w2));
      const next = (i + 1) % here.length;
      const [dw, dr] = [here[next][0] - w, here[next][1] - r];
      const [mw, mr] = [slopes[next][0] - slopes[i][0], slopes[next][1] - slopes[i][1]];
      twist = Math.max(twist, Math.abs(mw * dr - mr * dw) / Math.hypot(dw, dr));
    });
  }
  return { radius, twist };
}
