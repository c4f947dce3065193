/**
 * The band's cross-section, exact and flattened.
 */
import { AnnuletError } from "../../base/errors.js";
import { flattenSegment, type Segment, segmentStart } from "../../base/math/curve.js";
import type { Point2 } from "../../base/math/point.js";
import { findCrossing } from "../../base/math/polygon.js";
import { A_NUMBER, needed, type OptionRule, requireArgument, requireFields } from "../../base/options.js";
import { showLength } from "../../base/units.js";
import { type ProfileSpec, profileSchema } from "../../design/profile/profile.js";
import { readOptions } from "../../design/read-options.js";
import { checkSizes } from "./check-sizes.js";
import { buildOutline, type ExactProfile } from "./outline.js";

export { buildOutline, type ExactProfile } from "./outline.js";

/** A cross-section with its polyline. All lengths in mm. */
export interface Profile extends ExactProfile {
  /** The outline flattened to the tolerance: closed (the last point is not the first), simple, counter-clockwise. */
  readonly polyline: readonly Point2[];
  /** Indices into `polyline` of the seat's ends: it runs from high w (first) to low w (last). */
  readonly seatSpan: readonly [first: number, last: number];
}

/**
 * Builds a band's cross-section.
 *
 * @param spec the profile part of a design, defaults filled in
 * @param boreRadius radius of the bore's narrowest circle, mm, above 0
 * @param tolerance largest distance of the polyline from the exact outline, mm, above 0
 * @throws AnnuletError as `buildOutline`; `profile-crosses-itself` with the place; for what is no profile `option-unknown`,
 *   `option-invalid`, `option-missing`
 *
 * @example
 * const design = readDesign(document);
 * const { diameter } = resolveSize(design.size);
 * const profile = buildProfile(design.profile, diameter / 2, design.tolerance);
 */
export function buildProfile(spec: ProfileSpec, boreRadius: number, tolerance: number): Profile {
  requireFields("spec", spec, { width: A_SIZE, thickness: A_SIZE, bore: FORM, outside: FORM });
  requireArgument("boreRadius", boreRadius, A_SIZE);
  requireArgument("tolerance", tolerance, A_SIZE);
  checkSizes(spec, boreRadius, tolerance);
  return drawProfile(readOptions(profileSchema, spec), boreRadius, tolerance);
}

const A_SIZE: OptionRule = needed(A_NUMBER);
const FORM: OptionRule = {
  holds: (value) => typeof value === "object" && value !== null,
  allowed: "an object with its form",
  needed: true,
};

/** The same for a profile that is known to be one. */
export function drawProfile(spec: ProfileSpec, boreRadius: number, tolerance: number): Profile {
  const exact = buildOutline(spec, boreRadius, tolerance);
  const profile = flattenProfile(exact, (segment) => flattenSegment(segment, tolerance));
  requireSimple(profile);
  return profile;
}

/** @param flatten the points of a segment of the outline after its start, up to and with its end */
export function flattenProfile(exact: ExactProfile, flatten: (segment: Segment, at: number) => Point2[]): Profile {
  const points: Point2[] = [segmentStart(exact.outline[0])];
  const starts: number[] = [];
  exact.outline.forEach((segment, at) => {
    starts.push(points.length - 1);
    points.push(...flatten(segment, at));
  });
  points.pop();
  const polyline = exact.symmetric ? evenOut(points) : points;
  const [first, end] = exact.seatSegments;
  return { ...exact, polyline, seatSpan: [starts[first], starts[end]] };
}

/** @throws AnnuletError `profile-crosses-itself` with the place */
export function requireSimple({ polyline, boreRadius }: Profile): void {
  const crossing = findCrossing(polyline);
  if (crossing !== undefined) throw crossesItself(crossing, boreRadius);
}

/** Two points nearer than this are mirror twins, mm: rounding. */
const TWIN = 1e-9;

/** Makes a polyline that is symmetric but for rounding symmetric to the last bit; others are returned as they are. */
function evenOut(points: readonly Point2[]): readonly Point2[] {
  const count = points.length;
  const [w0, r0] = points[0];
  const shift = points.findIndex(([w, r]) => Math.hypot(w + w0, r - r0) < TWIN);
  const twinOf = (i: number) => points[(shift - i + count) % count];
  const isEven = points.every(([w, r], i) => Math.hypot(w + twinOf(i)[0], r - twinOf(i)[1]) < TWIN);
  if (shift < 0 || !isEven) return points;
  return points.map(([w, r], i): Point2 => [(w - twinOf(i)[0]) / 2, (r + twinOf(i)[1]) / 2]);
}

function crossesItself([w, r]: Point2, boreRadius: number): AnnuletError {
  const place = `w = ${showLength(w)}, ${showLength(r - boreRadius)} above the bore's narrowest circle`;
  return new AnnuletError({
    code: "profile-crosses-itself",
    message: `the cross-section crosses or touches itself at ${place}`,
    path: "profile",
    value: { w, r },
    hint: "make the rounded edges smaller or the band thicker",
  });
}
