/**
 * A channel: one groove along a row, its walls a little closer together than the stones are wide, so that they reach over the
 * girdles from both sides; on ledges in it lie the stones, between them bars of metal hold the walls apart.
 */
import type { Point2 } from "../../base/math/point.js";
import type { Mesh } from "../../mesh/mesh.js";
import { type AcrossRow, acrossRow } from "./across-row.js";
import { type GirdleShape, girdleBeside, towardsKeel } from "./girdle-shape.js";
import { bearingOf, type HollowOptions, pilotLevels, pilotOnly, ROOM } from "./hollow.js";
import { hollowBodies } from "./hollow-bodies.js";
import type { Ready } from "./setting-bodies.js";

export interface ChannelShape {
  readonly ready: Ready;
  /** How far each wall reaches over the stone, share of its width. */
  readonly cover: number;
  /** Angle between the faces of the girdle's notch, radians. */
  readonly bearing: number;
  /** Height of raised walls over the surface, mm, and their thickness. */
  readonly rise: number;
  readonly wall: number;
}

/** The groove at one stone; lengths in mm, (y, z) across the row. */
export interface Groove {
  /** Half its width between the walls, and of the notch. */
  readonly half: number;
  readonly notch: number;
  /** Heights of the ledges, of the notch's corners and of where it ends in the wall. */
  readonly ledge: number;
  readonly lower: number;
  readonly upper: number;
  readonly end: number;
}

/** The stone's own hollow is this much narrower than the groove where it opens into it, mm: no wall lies in a wall (chosen). */
const NARROWER = 0.01;

/** A stone's place in its row. */
export interface InRow {
  /** Unit vector of the row in the stone's coordinates. */
  readonly way: Point2;
  /** Of the circle along which the row goes, mm; infinite of a stone alone. */
  readonly radius: number;
}

export function grooveOf(shape: GirdleShape, { way, radius }: InRow, channel: ChannelShape, tolerance: number): Groove {
  const across = acrossRow(shape, way, radius);
  const half = across.half * (1 - 2 * channel.cover);
  const notch = across.half + ROOM;
  const { edge, depth } = bearingOf(shape, tolerance);
  const ledge = Math.min(across.lower - (notch - half) * across.pavilion, edge - (1 - shareAt(across, half)) * depth);
  const slope = Math.max(across.crown, Math.tan(channel.bearing - Math.atan(across.pavilion)));
  return { half, notch, ledge, lower: across.lower, upper: across.upper, end: across.upper + (notch - half) * slope };
}

/** The share of the girdle at which a hollow is as wide as the groove, or just narrower. */
function shareAt({ half, keel }: AcrossRow, groove: number): number {
  return (groove - NARROWER - keel) / (half + ROOM - keel);
}

/** Section of the groove, (y, z), counter-clockwise. */
export function grooveSection(groove: Groove, above: number, notched: boolean): Point2[] {
  const { half, notch, ledge, lower, upper, end } = groove;
  const right: Point2[] = [
    [half, ledge],
    ...(notched
      ? ([
          [notch, lower],
          [notch, upper],
          [half, end],
        ] as const)
      : []),
    [half, above],
  ];
  return [...right, ...right.toReversed().map(([y, z]): Point2 => [-y, z])];
}

/** Edges of raised walls are broken by this, mm, or by a third of the wall. */
const BROKEN = 0.1;

/** Section of what is raised: both walls in one, before the groove is cut into it. */
export function wallSection(half: number, { wall }: ChannelShape, foot: number, top: number): Point2[] {
  const broken = Math.min(BROKEN, wall / 3);
  const outer = half + wall;
  return [
    [-outer, foot],
    [outer, foot],
    [outer, top - broken],
    [outer - broken, top],
    [broken - outer, top],
    [-outer, top - broken],
  ];
}

/** What is cut below the groove for one stone: the bearing down to the pilot, up to a little above the ledge. */
export function hollowUnder(
  shape: GirdleShape,
  groove: Groove,
  way: Point2,
  options: HollowOptions & { readonly ready: Ready },
): Mesh[] {
  if (options.ready === "pilot") return hollowBodies(pilotOnly(shape, options), shape, options);
  const { tolerance } = options;
  const bearing = bearingOf(shape, tolerance);
  const share = shareAt(acrossRow(shape, way), groove.half);
  const outline = towardsKeel(girdleBeside(shape, ROOM, tolerance, "hollow"), shape.keel, share);
  const z = bearing.edge - (1 - share) * bearing.depth;
  const levels = [
    ...pilotLevels(shape, bearing, options).filter((level) => level.z < z),
    { z, outline },
    { z: groove.ledge + INTO_GROOVE, outline },
  ];
  return hollowBodies(levels, shape, options);
}

/** How far a hollow goes on into the groove, mm: clear of its floor between the facets (chosen). */
const INTO_GROOVE = 0.06;
