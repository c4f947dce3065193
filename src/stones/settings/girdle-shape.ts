/**
 * What settings are made round: a stone's girdle as an outline, its heights, and the line or point that its pavilion narrows
 * down to.
 */
import type { Point2, Point3 } from "../../base/math/point.js";
import { circle, circleCorners, offsetOutline } from "./offset-outline.js";

/** A stone as settings see it, in its own coordinates; mm. */
export interface GirdleShape {
  /** Its girdle seen from above, convex, counter-clockwise; its own image across y = 0. */
  readonly girdle: readonly Point2[];
  /** Radius of a girdle that is an exact circle; undefined where it is none. */
  readonly radius: number | undefined;
  readonly length: number;
  readonly width: number;
  /** From where to where on the x axis its lowest points lie: a culet's or point's middle, or a keel. */
  readonly keel: readonly [from: number, to: number];
  /** Heights of crown, girdle and pavilion. */
  readonly crown: number;
  readonly band: number;
  readonly pavilion: number;
  /** Widths of table and culet. */
  readonly table: number;
  readonly culet: number;
  /** All its corners. */
  readonly corners: readonly Point3[];
}

/** Whether an outline bounds a hollow, so that nothing of it may be lost, or a body. */
export type Bounds = "hollow" | "body";

/** The outline so far outside the girdle, mm. All of one stone and tolerance have as many points. */
export function girdleBeside({ girdle, radius }: GirdleShape, by: number, tolerance: number, bounds: Bounds): Point2[] {
  // Chords of the outline lie inside the true one by as much.
  if (radius === undefined) return offsetOutline(girdle, bounds === "hollow" ? by + tolerance : by);
  // One number of corners for all offsets of a stone: enough for one three times as wide.
  return circle(radius + by, circleCorners(WIDEST * radius, tolerance), bounds === "hollow" ? "around" : "even");
}

/** Outlines round a stone reach so many of its radii at most, or are that much finer than they need be (chosen). */
const WIDEST = 1.5;

/** An outline drawn together towards the keel, as the pavilion does: 1 leaves it, 0 is the keel. */
export function towardsKeel(outline: readonly Point2[], [from, to]: GirdleShape["keel"], share: number): Point2[] {
  return outline.map(([x, y]) => {
    const at = Math.min(to, Math.max(from, x));
    return [at + share * (x - at), share * y];
  });
}
