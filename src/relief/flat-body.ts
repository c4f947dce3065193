/**
 * A body of the pattern or a mark while it is flat: raised on the seat, sunk into it or pierced through the wall; and the
 * one function that moves and lifts such a body, with everything about it that has a place.
 */

import type { FlatTriangles } from "../art/image/flat-triangles.js";
import type { Point3 } from "../base/math/point.js";
import { inverseOf, type Motion, movedAcross, movedAlong, movedSpan, STAY, turnsOver } from "../flat/motion.js";
import type { Rise } from "./weave/rise-along.js";

/** A polygon above the seat: the outer ring counter-clockwise seen from outside, then its holes; points are (u, v, h). */
export type ReliefPolygon = readonly (readonly Point3[])[];

/** A body over one period of the strip, or over the whole of it. Heights are depths where it is not raised. */
export interface FlatBody {
  readonly mode: "raised" | "sunk" | "pierced";
  /** Names of the regions in it. */
  readonly names: readonly string[];
  /** Where it stands in the document; of what is sunk, where its depth does. */
  readonly path: string;
  /**
   * What its surface follows from beside its outline: bodies of the same are alike where their outlines are. Undefined where
   * there is more to it: heights of an image, pieces of a weave.
   */
  readonly made: string | undefined;
  /** Whether heights go along the radius, so that no wall leans over; else along the surface's normal. Of a hole false. */
  readonly upright: boolean;
  /**
   * The upper surface without the upright walls; (u, v, h), mm. Of a hole its broken edge alone, h being mm below the
   * surface, of the seat as of the bore.
   */
  readonly top: readonly ReliefPolygon[];
  /** Of a height map the upper surface in triangles, and what closes it beneath, of one outline; `top` is empty then. */
  readonly surface: { readonly top: FlatTriangles; readonly foot: FlatTriangles } | undefined;
  /** The lowest contour, from which the walls go straight down. Of a hole the outline at the surfaces; h is 0. */
  readonly outline: readonly ReliefPolygon[];
  /** Of a hole the outline between its broken edges; h is their depth. Nothing for others. */
  readonly throat: readonly ReliefPolygon[];
  /** u of the two sides that neighbouring tiles share, mm; undefined where the body ends by itself. */
  readonly seam: readonly [left: number, right: number] | undefined;
  /** mm along the band after which a body that ends by itself comes again; undefined where it stands once. */
  readonly period: number | undefined;
  /** How often it comes round the band, where it has a seam or a period. */
  readonly copies: number;
  /** The highest contour, mm above the seat. Of a hole the depth of its broken edges. */
  readonly height: number;
  /** What is added to the heights, once the surface is fine enough to follow it; undefined where nothing is. */
  readonly rise: Rise | undefined;
  /** Where it sinks into the seat; undefined where nowhere. */
  readonly fade: Fade | undefined;
  /** Whether it fills the plain zone up to the rails, and so is part of the band and no relief. Default no. */
  readonly filling?: boolean | undefined;
  /** The regions in it where several were united; default the one that it is. */
  readonly members?: readonly BodyMember[] | undefined;
}

/** A region that was united with others. */
export interface BodyMember {
  readonly name: string;
  /** Where it stands in the document. */
  readonly path: string;
  /** All rings of its own art, before it was cut to what the body is: it comes again and ends as the body does; h is 0. */
  readonly outline: ReliefPolygon;
}

/** A span whose relief sinks into the seat at both ends. */
export interface Fade {
  /** u of the ends, mm. */
  readonly ends: readonly [low: number, high: number];
  /** mm from each end over which it sinks. */
  readonly length: number;
  /** Largest deviation from its curve, mm. */
  readonly tolerance: number;
}

/** What becomes of a body. */
export interface BodyMap {
  readonly motion: Motion;
  /** mm by which its upper surface goes up, on upright walls that grow; what closes it beneath stays. */
  readonly lift: number;
}

/** A body moved along and across the seat, mirrored or not. */
export function moveBody(body: FlatBody, motion: Motion): FlatBody {
  return mapBody(body, { motion, lift: 0 });
}

/** A body whose upper surface stands so many mm higher. */
export function liftBody(body: FlatBody, lift: number): FlatBody {
  return mapBody(body, { motion: STAY, lift });
}

/**
 * A body moved and lifted. All keys are named, so that a new field of `FlatBody` does not compile before it says here how
 * it moves.
 */
export function mapBody(body: FlatBody, { motion, lift }: BodyMap): FlatBody {
  const polygons = (list: readonly ReliefPolygon[]) => list.map((polygon) => mapPolygon(polygon, motion, lift));
  return {
    mode: body.mode,
    names: body.names,
    path: body.path,
    made: body.made,
    upright: body.upright,
    top: polygons(body.top),
    surface: body.surface && {
      top: mapTriangles(body.surface.top, motion, lift),
      foot: mapTriangles(body.surface.foot, motion, 0),
    },
    outline: polygons(body.outline),
    throat: polygons(body.throat),
    seam: body.seam && movedSpan(body.seam, motion),
    period: body.period,
    copies: body.copies,
    height: body.height + lift,
    rise: body.rise && mapRise(body.rise, motion, lift),
    fade: body.fade && mapFade(body.fade, motion),
    filling: body.filling,
    members: body.members?.map(({ name, path, outline }) => {
      return { name, path, outline: mapPolygon(outline, motion, 0) };
    }),
  };
}

/** A ring that is turned over is turned round, so that its inside stays on its left. */
function mapPolygon(polygon: ReliefPolygon, motion: Motion, lift: number): ReliefPolygon {
  return polygon.map((ring) => {
    const moved = mapPoints(ring, motion, lift);
    return turnsOver(motion) ? moved.reverse() : moved;
  });
}

/** The triangles of a surface that is turned over are turned round as rings are. */
function mapTriangles({ points, triangles }: FlatTriangles, motion: Motion, lift: number): FlatTriangles {
  return {
    points: mapPoints(points, motion, lift),
    triangles: turnsOver(motion) ? triangles.toReversed() : triangles,
  };
}

function mapPoints(points: readonly Point3[], motion: Motion, lift: number): Point3[] {
  return points.map(([u, v, h]): Point3 => [movedAlong(u, motion), movedAcross(v, motion), h + lift]);
}

/** What rises over a place rises over where that has gone. */
function mapRise({ at, from, step, tolerance }: Rise, motion: Motion, lift: number): Rise {
  const back = inverseOf(motion);
  return { at: (u, v) => at(movedAlong(u, back), movedAcross(v, back)), from: from + lift, step, tolerance };
}

function mapFade({ ends, length, tolerance }: Fade, motion: Motion): Fade {
  return { ends: movedSpan(ends, motion), length, tolerance };
}
