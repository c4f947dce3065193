/**
 * The way that a bead line takes in space: nodes close together, at which beads' centres can be measured and placed.
 */

import type { BandSurface } from "../band/surface/surface.js";
import type { Point2, Point3 } from "../base/math/point.js";
import { TURN } from "../base/units.js";
import type { RunLine } from "../flat/runs.js";
import { verticesOf } from "../flat/walk-line.js";

/** Where a bead stands. */
export interface BeadPlace {
  readonly centre: Point3;
  /** Outward unit normal of the carrying surface. */
  readonly outward: Point3;
}

/** A line in space by node number; the last node of one that closes is its first again, or its first one tile on. */
export interface BeadTrack {
  /** Number of the last node. */
  readonly last: number;
  /** The centre of a bead at a node, `rise` mm from the carrying surface. */
  readonly centreAt: (node: number, rise: number) => Point3;
  /** The bead at a node or between two; past the last node it goes on where the line does. */
  readonly placeAt: (at: number, rise: number) => BeadPlace;
  /** The node number at a place of the flat line: index of a side and share of it. */
  readonly nodeOf: (at: number) => number;
}

/** Longest span of a flat line that is taken as straight in space, mm: its chord is short by under 1e-5 of it. */
const MEASURE_STEP = 0.1;

/** The track of a flat line on the seat, `height` mm above it. */
export function seatTrack(line: RunLine, wrap: BandSurface, height: number): BeadTrack {
  const points = verticesOf(line);
  const flat: Point2[] = [points[0]];
  const nodes = [0];
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]];
    const count = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / MEASURE_STEP));
    for (let k = 1; k <= count; k++)
      flat.push([a[0] + ((b[0] - a[0]) * k) / count, a[1] + ((b[1] - a[1]) * k) / count]);
    nodes.push(flat.length - 1);
  }
  const last = flat.length - 1;
  const flatAt = (at: number): Point2 => {
    const rounds = at > last ? Math.floor(at / last) : 0;
    const rest = at - rounds * last;
    const i = Math.min(Math.floor(rest), last - 1);
    const t = rest - i;
    const [a, b] = [flat[i], flat[i + 1]];
    const ahead = rounds * (flat[last][0] - flat[0][0]);
    return [a[0] + t * (b[0] - a[0]) + ahead, a[1] + t * (b[1] - a[1])];
  };
  return {
    last,
    centreAt: (node, rise) => wrap.forward(flat[node][0], flat[node][1], height + rise),
    placeAt: (at, rise) => {
      const [u, v] = flatAt(at);
      return { centre: wrap.forward(u, v, height + rise), outward: wrap.normal(u, v) };
    },
    nodeOf: (at) => {
      const i = Math.min(Math.floor(at), nodes.length - 2);
      return nodes[i] + (at - i) * (nodes[i + 1] - nodes[i]);
    },
  };
}

/** A line once round the finger axis that carries beads: a circle on a surface of revolution. */
export interface BeadRound {
  /** Where it is at an angle. */
  readonly at: (angle: number) => RoundPlace;
  /** Whether it is the same at all angles. */
  readonly revolved: boolean;
  /** Angle of the first bead, radians. */
  readonly startAngle: number;
  /** θ of its first and last bead, radians, where it does not go all the way round. Default: it does. */
  readonly arc?: readonly [from: number, to: number] | undefined;
  /** Alike units of the pattern round the band, which get as many beads each where that changes little. Default 1. */
  readonly units?: number;
}

/** A place of the cross-section that carries a bead. */
export interface RoundPlace {
  /** mm along the axis. */
  readonly w: number;
  /** mm from the axis. */
  readonly radius: number;
  /** Outward unit normal of the carrying surface in (w, r). */
  readonly outward: Point2;
}

/** The track of a line round the finger axis, or of its arc. */
export function roundTrack({ at: sectionAt, startAngle, arc }: BeadRound): BeadTrack {
  const [from, turn] = arc === undefined ? [startAngle, TURN] : [arc[0], arc[1] - arc[0]];
  const last = Math.ceil((turn * sectionAt(from).radius) / MEASURE_STEP);
  const placeAt = (at: number, rise: number): BeadPlace => {
    const angle = from + (turn * at) / last;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const { w, radius, outward } = sectionAt(angle);
    const [nw, nr] = outward;
    const r = radius + rise * nr;
    return { centre: [r * cos, r * sin, w + rise * nw], outward: [nr * cos, nr * sin, nw] };
  };
  return { last, centreAt: (node, rise) => placeAt(node, rise).centre, placeAt, nodeOf: (at) => at };
}
