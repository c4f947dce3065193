/**
 * Where a mirror across the band may stand, found in the pattern's own places: in the middle of what is covered, which is the
 * top of the ring, and half way between rings of outlines that may be images of each other.
 *
 * These are guesses by boxes alone: whole outlines decide.
 */

import { extent } from "../base/math/extent.js";
import type { FlatBody } from "../relief/flat-body.js";

export interface MirrorAxesOptions {
  /** u of the top of the ring and once round, mm. */
  readonly top: number;
  readonly round: number;
  /** How far an outline may lie from an image to be that image, mm. */
  readonly same: number;
}

/** Most places that are told: what has more is a texture, and most of these come to the same. */
const MOST_AXES = 6;

/** u, mm, the likeliest first. */
export function mirrorAxes(bodies: readonly FlatBody[], { top, round, same }: MirrorAxesOptions): number[] {
  // What goes all the way round begins opposite the top.
  if (bodies.some(({ seam, period }) => seam === undefined && period === undefined)) return [top];
  const rings = bodies.map((body) => ({ period: periodOf(body, round), boxes: boxesOf(body) }));
  const axes = [0];
  const [first] = rings.filter(({ boxes }) => boxes.length > 0).sort((a, b) => a.boxes.length - b.boxes.length);
  if (first === undefined) return axes;
  const half = first.period / 2;
  for (const box of first.boxes) {
    if (!isAsLarge(box, first.boxes[0], same)) continue;
    const axis = snapped(rest((box.middle + first.boxes[0].middle) / 2, half), half, same);
    if (axes.some((other) => apart(axis, other, half) <= same)) continue;
    if (rings.every(({ period, boxes }) => isMirrored(boxes, axis, period, same))) axes.push(axis);
    if (axes.length === MOST_AXES) break;
  }
  return axes;
}

/** The box of a ring. */
interface RingBox {
  readonly middle: number;
  readonly wide: number;
  readonly low: number;
  readonly high: number;
}

/** The boxes of all rings that the seam does not cut. */
function boxesOf({ outline, seam }: FlatBody): RingBox[] {
  return outline.flat().flatMap((ring): RingBox[] => {
    if (ring.some(([u]) => u === seam?.[0] || u === seam?.[1])) return [];
    const [left, right] = extent(ring.map(([u]) => u));
    const [low, high] = extent(ring.map(([, v]) => v));
    return [{ middle: (left + right) / 2, wide: right - left, low, high }];
  });
}

function periodOf({ seam }: FlatBody, round: number): number {
  return seam === undefined ? round : seam[1] - seam[0];
}

function isAsLarge(a: RingBox, b: RingBox, same: number): boolean {
  return [a.wide - b.wide, a.low - b.low, a.high - b.high].every((off) => Math.abs(off) <= 2 * same);
}

/** Whether every box has its image among the boxes. */
function isMirrored(boxes: readonly RingBox[], axis: number, period: number, same: number): boolean {
  const sorted = boxes.map((box) => ({ box, at: rest(box.middle, period) }));
  return sorted.every(({ box, at }) =>
    sorted.some((other) => apart(2 * axis - at, other.at, period) <= 2 * same && isAsLarge(box, other.box, same)),
  );
}

/** What is left of a length beyond whole periods, mm. */
function rest(u: number, period: number): number {
  return u - period * Math.floor(u / period);
}

function apart(a: number, b: number, period: number): number {
  const off = rest(a - b, period);
  return Math.min(off, period - off);
}

/** Tiles have their mirrors at their sides and middles: a place as near to half of that is there. */
function snapped(axis: number, half: number, same: number): number {
  const place = (Math.round((2 * axis) / half) * half) / 2;
  return Math.abs(axis - place) <= same ? place : axis;
}
