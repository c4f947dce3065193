/**
 * The line of a surface at an angle where it is longer or shorter than where the flat pattern is true: each of its curves
 * carries what lies flat on the same curve there, evenly shorter or longer. Beyond its ends lengths stay true.
 */
import { pointAt, type Segment, tangentAt } from "../../base/math/curve.js";
import { hollowOf, type LinePiece, layPieces, nearestOnLine } from "./line.js";
import type { SurfaceLine } from "./surface.js";

/** A line with how much longer than flat it is across, at a place. */
export interface NarrowedLine extends SurfaceLine {
  readonly acrossAt: (v: number) => number;
}

/**
 * @param flat the curves where flat lengths are true
 * @param chain as many curves, here
 */
export function narrowedLine(flat: readonly LinePiece[], chain: readonly Segment[]): NarrowedLine {
  const own = layPieces(chain);
  const [flatLength, length] = [flat, own].map((pieces) => pieces.reduce((sum, piece) => sum + piece.length, 0));
  const half = flatLength / 2;
  const locate = (v: number) => {
    const s = v + half;
    const found = flat.findIndex((piece) => s <= piece.start + piece.length);
    const i = found === -1 ? flat.length - 1 : found;
    const inside = Math.min(Math.max(s - flat[i].start, 0), flat[i].length);
    const { segment } = own[i];
    return { i, segment, at: (inside / flat[i].length) * own[i].length, beyond: s - flat[i].start - inside };
  };
  /** v at an arc length from the line's start. */
  const flatOf = (s: number) => {
    if (s <= 0) return s - half;
    if (s >= length) return half + s - length;
    const found = own.findIndex((piece) => s <= piece.start + piece.length);
    const i = found === -1 ? own.length - 1 : found;
    return flat[i].start + ((s - own[i].start) / own[i].length) * flat[i].length - half;
  };
  return {
    length,
    reach: half,
    inFrom: (side, inset) => flatOf(side === "start" ? inset : length - inset),
    acrossAt: (v) => {
      const { i, beyond } = locate(v);
      return beyond === 0 ? own[i].length / flat[i].length : 1;
    },
    point: (v, h) => {
      const { segment, at, beyond } = locate(v);
      const [w, r] = pointAt(segment, at);
      const [tw, tr] = tangentAt(segment, at);
      return [w + beyond * tw - h * tr, r + beyond * tr + h * tw];
    },
    normal: (v) => {
      const { segment, at } = locate(v);
      const [tw, tr] = tangentAt(segment, at);
      return [-tr, tw];
    },
    hollowAt: (v) => {
      const { segment, beyond } = locate(v);
      return beyond === 0 ? hollowOf(segment) : Number.POSITIVE_INFINITY;
    },
    inverse: (w, r) => {
      const [s, h] = nearestOnLine(own, [w, r]);
      return [flatOf(s), h];
    },
  };
}
