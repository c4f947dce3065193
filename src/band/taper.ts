/**
 * The band's sizes at every angle: width and thickness, each a smooth curve through the places where the design gives it.
 */
import { roundCurve } from "../base/math/round-curve.js";
import { radians, TOP, TURN } from "../base/units.js";
import type { ProfileSpec } from "../design/profile/profile.js";

/** What of the cross-section changes round the ring, mm. */
export interface SectionSizes {
  readonly width: number;
  readonly thickness: number;
}

/** How the sizes change. */
export interface Taper {
  readonly sizesAt: (angle: number) => SectionSizes;
  /** The top, the angles at which the design gives a size, the back, and what these are on the other side; radians. */
  readonly given: readonly number[];
}

const BACK = TOP + TURN / 2;

/** The band's taper; undefined where it is the same all round, whatever the design says of it. */
export function taperOf(spec: ProfileSpec): Taper | undefined {
  const { taper, width, thickness } = spec;
  if (taper === undefined) return undefined;
  const between = taper.between.map((place) => ({ ...place, angle: radians(place.angle) }));
  const left = between.every(({ angle }) => Math.cos(angle) <= 0);
  const mirrored = left || between.every(({ angle }) => Math.cos(angle) >= 0);
  const curveOf = (size: keyof SectionSizes, top: number) => {
    const places = [{ angle: TOP, value: top }];
    const back = taper[size];
    if (back !== undefined) places.push({ angle: BACK, value: back });
    for (const { angle, [size]: value } of between) if (value !== undefined) places.push({ angle, value });
    if (!mirrored) return roundCurve(places);
    const folded = roundCurve(places.flatMap((place) => bothSides({ ...place, angle: fold(place.angle) })));
    return (angle: number) => folded(fold(angle));
  };
  const [widthAt, thicknessAt] = [curveOf("width", width), curveOf("thickness", thickness)];
  const angles = between.map(({ angle }) => angle);
  const given = [TOP, ...angles, BACK, ...(mirrored ? angles.map((angle) => 2 * TOP - angle) : [])];
  if (given.every((angle) => widthAt(angle) === width && thicknessAt(angle) === thickness)) return undefined;
  return { sizesAt: (angle) => ({ width: widthAt(angle), thickness: thicknessAt(angle) }), given };
}

/** How far an angle lies from the top on either side, radians, 0 to half a turn: both sides to the last bit alike. */
function fold(angle: number): number {
  const away = Math.abs(angle - TOP) % TURN;
  return Math.min(away, TURN - away);
}

/** A place and its mirror image, once where it is its own. */
function bothSides<Place extends { readonly angle: number }>(place: Place): Place[] {
  const { angle } = place;
  return angle === 0 || angle >= TURN / 2 ? [place] : [place, { ...place, angle: TURN - angle }];
}
