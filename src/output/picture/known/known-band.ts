/**
 * The band's own surface: its cross-section as exact lines and arcs, taken round the finger axis.
 *
 * Where the section changes with θ, a point of it moves by dP in its half plane for each radian, and the normal n of the
 * section takes a part along θ as well, −(n · dP) / r, so that it is square to the way round too.
 */
import type { Band } from "../../../band/band.js";
import { pointAt, type Segment, segmentLength } from "../../../base/math/curve.js";
import { TURN } from "../../../base/units.js";
import { type KnownSurface, mostLean, reachOf } from "./known-surface.js";

/** A line or an arc, with what is asked of it for every point. */
interface Piece {
  readonly segment: Segment;
  readonly length: number;
  /** Radians. */
  readonly lean: number;
}

/** Angles at which the section of a band that tapers is looked up: between two of them it changes by less than a µm. */
const ROWS = 1440;

const STEP = TURN / ROWS;

/** @param tolerance by how much the mesh's chords stand off, mm */
export function knownBand(band: Band, tolerance: number): KnownSurface {
  const reach = reachOf(tolerance);
  const rows = new Map<number, readonly Piece[]>();
  const piecesAt = (row: number): readonly Piece[] => {
    const at = band.revolved ? 0 : ((row % ROWS) + ROWS) % ROWS;
    const known = rows.get(at) ?? piecesOf(band.sectionAt(at * STEP).outline, band.boreRadius, tolerance);
    rows.set(at, known);
    return known;
  };
  return (x, y, z, found) => {
    const r = Math.sqrt(x * x + y * y);
    if (r === 0) return;
    const row = Math.round(Math.atan2(y, x) / STEP);
    const pieces = piecesAt(row);
    for (let i = 0; i < pieces.length; i++) {
      const foot = footOn(pieces[i], z, r, reach);
      if (foot === undefined) continue;
      const { nw, nr, share } = foot;
      let around = 0;
      if (!band.revolved) {
        const before = placeOn(piecesAt(row - 1)[i], share);
        const after = placeOn(piecesAt(row + 1)[i], share);
        around = -(nw * (after[0] - before[0]) + nr * (after[1] - before[1])) / (2 * STEP * r);
      }
      const scale = 1 / Math.sqrt(1 + around * around);
      const radial = (nr * scale) / r;
      const turning = (around * scale) / r;
      found(x * radial - y * turning, y * radial + x * turning, nw * scale, pieces[i].lean);
    }
  };
}

function piecesOf(outline: readonly Segment[], boreRadius: number, tolerance: number): readonly Piece[] {
  return outline.map((segment) => {
    const across = segment.kind === "line" ? Number.POSITIVE_INFINITY : segment.radius;
    return { segment, length: segmentLength(segment), lean: mostLean([boreRadius, across], tolerance) };
  });
}

function placeOn({ segment, length }: Piece, share: number) {
  return pointAt(segment, share * length);
}

/** The outline's normal, to the right of its way, at the foot of a point on a piece, and which share of the piece that is. */
function footOn({ segment, length }: Piece, w: number, r: number, reach: number) {
  if (segment.kind === "line") {
    const tw = (segment.to[0] - segment.from[0]) / length;
    const tr = (segment.to[1] - segment.from[1]) / length;
    const dw = w - segment.from[0];
    const dr = r - segment.from[1];
    const along = dw * tw + dr * tr;
    if (Math.abs(dw * tr - dr * tw) > reach || along < -reach || along > length + reach) return undefined;
    return { nw: tr, nr: -tw, share: Math.min(1, Math.max(0, along / length)) };
  }
  const dw = w - segment.centre[0];
  const dr = r - segment.centre[1];
  const distance = Math.sqrt(dw * dw + dr * dr);
  if (Math.abs(distance - segment.radius) > reach) return undefined;
  const turn = Math.sign(segment.sweep);
  // Within half a turn of the arc's middle.
  const middle = Math.abs(segment.sweep) / 2;
  const turned = turn * (Math.atan2(dr, dw) - segment.start);
  const angle = turned - TURN * Math.round((turned - middle) / TURN);
  const spare = reach / segment.radius;
  if (angle < -spare || angle > 2 * middle + spare) return undefined;
  // Beyond its ends the normal is that of the end.
  const held = segment.start + turn * Math.min(2 * middle, Math.max(0, angle));
  return {
    nw: turn * Math.cos(held),
    nr: turn * Math.sin(held),
    share: (turn * (held - segment.start)) / (2 * middle),
  };
}
