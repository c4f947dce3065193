/**
 * Prongs on a collar: posts that stand beside the stone, thinner above than at the foot, notched for its girdle; the collar
 * below the girdle carries the stone and joins the prongs to the metal.
 */
import type { Mesh } from "../../mesh/mesh.js";
import { type GirdleShape, girdleBeside } from "./girdle-shape.js";
import { type HollowOptions, hollowLevels, ROOM } from "./hollow.js";
import type { Post } from "./post.js";
import { type Level, stackOutlines } from "./stacked.js";

export interface ProngShape {
  /** At the foot, mm; default a fifth of the stone's width, at least 0.6. */
  readonly diameter?: number | undefined;
  /** Width of the tip, share of the foot's. */
  readonly tip: number;
  /** Height over the girdle, share of the crown's. */
  readonly height: number;
  /** How deep the girdle goes into it, share of its width there. */
  readonly notch: number;
}

/** Least prong of a model, mm (gemwares.com), and its share of the stone's width (1.4 to 1.8 of 6.5 mm, jewellersreviews.com). */
const LEAST_PRONG = 0.6;
const PRONG_SHARE = 0.2;

/** The collar's upper edge lies so much of the pavilion below the girdle, so that the girdle stays in sight (chosen). */
const COLLAR_BELOW = 0.25;

/** The collar reaches so many of a prong's radii beyond its axis, and no less than this beside the hollow, mm (chosen). */
const COLLAR_SHARE = 0.85;
const LEAST_COLLAR = 0.2;

/** Widths of a prong, mm. */
export interface ProngSizes {
  /** Radii at the foot, at the girdle and below the dome. */
  readonly foot: number;
  readonly girdle: number;
  readonly tip: number;
  /** Its highest point over the girdle's upper edge. */
  readonly top: number;
  /** From the girdle to its axis; of one between two stones, which each go into it half as deep. */
  readonly away: number;
  readonly sharedAway: number;
}

/** @param foot height at which it begins, mm; below 0 */
export function prongSizes(shape: GirdleShape, prong: ProngShape, foot: number): ProngSizes {
  const radius = (prong.diameter ?? Math.max(LEAST_PRONG, PRONG_SHARE * shape.width)) / 2;
  const tip = radius * prong.tip;
  // The dome stands on the height that is asked for, so that a low prong is not all dome.
  const top = Math.max(prong.height * shape.crown, tip / 2) + tip / 2;
  const straight = top - tip;
  const girdle = straight <= 0 ? tip : radius + ((tip - radius) * -foot) / (straight - foot);
  const [away, sharedAway] = [girdle * (1 - 2 * prong.notch), girdle * (1 - prong.notch)];
  return { foot: radius, girdle, tip, top, away, sharedAway };
}

export function prongPost({ foot: radius, tip, top }: ProngSizes, at: Post["at"], foot: number): Post {
  return { at, foot, top, radius, tip };
}

/** How far beside the girdle the collar reaches, mm. */
export function collarReach({ away, foot }: ProngSizes): number {
  return Math.max(ROOM + LEAST_COLLAR, away + COLLAR_SHARE * foot);
}

/** The ring below the girdle. */
export function collarMesh(shape: GirdleShape, sizes: ProngSizes, foot: number, tolerance: number): Mesh {
  const top = -shape.band - COLLAR_BELOW * shape.pavilion;
  const outline = girdleBeside(shape, collarReach(sizes), tolerance, "body");
  return stackOutlines([
    { z: Math.min(foot, top - ROOM), outline },
    { z: top, outline },
  ]);
}

/** The stone with room all round, and all that is above its table: what notches prongs without taking their tips. */
export function notchLevels(shape: GirdleShape, options: HollowOptions): Level[] {
  const { tolerance, around } = options;
  const levels = hollowLevels(shape, options).slice(0, -1);
  const outline = girdleBeside(shape, ROOM, tolerance, "hollow");
  const share = Math.min(1, (shape.table + 2 * ROOM) / (shape.width + 2 * ROOM));
  const table = outline.map(([x, y]) => [share * x, share * y] as const);
  const { crown, width } = shape;
  const slope = crown / ((width - shape.table) / 2);
  const lift = crownLift(shape, slope);
  return [
    ...levels,
    { z: lift, outline },
    { z: lift + slope * (1 - share) * (width / 2 + ROOM), outline: table },
    { z: Math.max(around.above, lift + crown + 2 * ROOM), outline: table },
  ];
}

/** How high the crown's cone begins so that every corner keeps its room. */
function crownLift(shape: GirdleShape, slope: number): number {
  let lift = ROOM;
  for (const [x, y, z] of shape.corners) {
    if (z < 0) continue;
    const share = shape.radius === undefined ? shareOf(shape, x, y) : Math.hypot(x, y) / shape.radius;
    const inside = (1 - share) * (shape.width / 2) + ROOM;
    lift = Math.max(lift, z - slope * inside + ROOM * Math.hypot(1, slope));
  }
  return lift;
}

/** How large the girdle's outline would have to be to go through a point, as a share. */
function shareOf({ girdle }: GirdleShape, x: number, y: number): number {
  let most = 0;
  let [ax, ay] = girdle[girdle.length - 1];
  for (const [bx, by] of girdle) {
    const [nx, ny] = [by - ay, ax - bx];
    most = Math.max(most, (x * nx + y * ny) / (ax * nx + ay * ny));
    [ax, ay] = [bx, by];
  }
  return most;
}
