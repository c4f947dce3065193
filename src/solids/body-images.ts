/**
 * Which bodies of a pattern are images of which under a mirror of the flat seat: each may be its own, or the image of another.
 *
 * Outlines are asked by whole sides, both ways. Two bodies are alike only where they are worked in the same step and made
 * alike, so that a high one is never taken for a low one, nor a hollow for a hole. Heights of images are asked by triangles.
 */

import { coverOf, type Side, sidesOf } from "../base/math/cover.js";
import { extent } from "../base/math/extent.js";
import type { Point2 } from "../base/math/point.js";
import { type Remember, rememberPausing } from "../base/memory.js";
import { BREATH, finish, type Pausing } from "../base/pausing.js";
import { type Motion, movedAcross, movedAlong, movedSpan, turnsOver } from "../flat/motion.js";
import { workSteps } from "../pattern/work-steps.js";
import type { Fade, FlatBody } from "../relief/flat-body.js";
import { isSurfaceImage } from "./surface-images.js";

export interface BodyImagesOptions {
  /** Done twice it must change nothing. */
  readonly motion: Motion;
  /** mm once round the band. */
  readonly round: number;
  /** How far an outline may lie from an image to be that image, mm, above 0. */
  readonly same: number;
  /** Takes over what was found of bodies before. */
  readonly remember: Remember;
}

/** For each body the number of its image; undefined where one has none. */
export function bodyImages(bodies: readonly FlatBody[], options: BodyImagesOptions): readonly number[] | undefined {
  return finish(findingImages(bodies, options));
}

/** The same in pieces. */
export function* findingImages(
  bodies: readonly FlatBody[],
  options: BodyImagesOptions,
): Pausing<readonly number[] | undefined> {
  const steps = workSteps(Array.from(bodies.keys()), (i) => bodies[i].mode);
  const images = new Array<number>(bodies.length).fill(-1);
  for (const { items } of steps) {
    for (const [at, i] of items.entries()) {
      if (images[i] !== -1) continue;
      // Most bodies are their own images.
      let image: number | undefined;
      for (const j of items.slice(at)) {
        if (images[j] !== -1 || !(yield* areImages(bodies[i], bodies[j], options))) continue;
        image = j;
        break;
      }
      if (image === undefined) return undefined;
      images[i] = image;
      images[image] = i;
    }
  }
  return images;
}

/** Heights and lengths that differ by less are one, mm: rounding. */
const ROUNDING = 1e-9;

function isNear(a: number, b: number): boolean {
  return Math.abs(a - b) <= ROUNDING;
}

/** Nothing is said while bodies are compared. */
const NOTHING = () => 0;

/** Whether each of two bodies is the other's image. */
function* areImages(
  one: FlatBody,
  other: FlatBody,
  { motion, round, same, remember }: BodyImagesOptions,
): Pausing<boolean> {
  if (!canBeAlike(one) || !canBeAlike(other)) return false;
  if (one.mode !== other.mode || one.made !== other.made || one.copies !== other.copies) return false;
  // A section that ends in the middle of the widest place is as high as that.
  if (Math.abs(one.height - other.height) > same) return false;
  if (!fadesAlike(one.fade, other.fade, motion, same)) return false;
  const what = { by: ["images", motion, round, same], of: [one, other], said: NOTHING };
  return yield* rememberPausing(remember, what, function* () {
    const [mine, others] = [sidesAround(one, round), sidesAround(other, round)];
    if (!isNear(mine.period, others.period) || !sameExtent(mine.sides, others.sides, motion, same)) return false;
    if (one.surface !== undefined || other.surface !== undefined) {
      const { period } = others;
      const left = other.seam?.[0] ?? leftOf(others.sides);
      const both = one.surface !== undefined && other.surface !== undefined;
      return both && (yield* isSurfaceImage(one.surface.top, other.surface.top, { motion, left, period }));
    }
    if (!(yield* liesOn(mine, others, motion, same))) return false;
    return one === other || (yield* liesOn(others, mine, motion, same));
  });
}

/** Whether a body's surface follows from its outline and how it is made, or is known triangle by triangle. */
function canBeAlike({ made, surface, rise, period }: FlatBody): boolean {
  return (made !== undefined || surface !== undefined) && rise === undefined && period === undefined;
}

function leftOf(sides: readonly Side[]): number {
  return sides.reduce((least, [[a], [b]]) => Math.min(least, a, b), Number.POSITIVE_INFINITY);
}

function fadesAlike(one: Fade | undefined, other: Fade | undefined, motion: Motion, same: number): boolean {
  if (one === undefined || other === undefined) return one === other;
  const ends = movedSpan(one.ends, motion);
  return isNear(one.length, other.length) && ends.every((end, i) => Math.abs(end - other.ends[i]) <= same);
}

/** What bounds a body, and mm after which it comes again: from seam to seam, or once round. */
interface Around {
  readonly sides: readonly Side[];
  readonly period: number;
}

/** All sides but those that lie on a seam. */
function sidesAround({ outline, seam }: FlatBody, round: number): Around {
  const all = outline.flat().flatMap((ring) =>
    sidesOf(
      ring.map(([u, v]): Point2 => [u, v]),
      true,
    ),
  );
  if (seam === undefined) return { sides: all, period: round };
  const [left, right] = seam;
  return {
    sides: all.filter(([[au], [bu]]) => !(au === bu && (au === left || au === right))),
    period: right - left,
  };
}

/** Whether the images of sides reach as far across the seat as others do: most that are no images do not. */
function sameExtent(sides: readonly Side[], others: readonly Side[], motion: Motion, same: number): boolean {
  const across = (list: readonly Side[]) => extent(list.flatMap(([a, b]) => [a[1], b[1]]));
  const [low, high] = across(sides).map((v) => movedAcross(v, motion));
  const [least, most] = across(others);
  return Math.abs(Math.min(low, high) - least) <= same && Math.abs(Math.max(low, high) - most) <= same;
}

/** Sides that are asked between two places where the work may be interrupted (chosen): each meets a column of others. */
const SIDES_AT_A_BREATH = 512;

/**
 * Whether the images of sides lie on others, over their whole length and running their way, so that a shape is told from
 * its ground. An image that is turned over runs the other way.
 */
function* liesOn(sides: Around, others: Around, motion: Motion, same: number): Pausing<boolean> {
  const covered = coverOf(others.sides, { reach: same, period: others.period, directed: true });
  const image = ([u, v]: Point2): Point2 => [movedAlong(u, motion), movedAcross(v, motion)];
  const back = turnsOver(motion);
  for (const [i, [a, b]] of sides.sides.entries()) {
    if (i % SIDES_AT_A_BREATH === 0) yield BREATH;
    if (!covered(back ? [image(b), image(a)] : [image(a), image(b)])) return false;
  }
  return true;
}
