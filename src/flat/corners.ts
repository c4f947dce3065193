/**
 * Corners of a bead line, as beads feel them.
 *
 * A line turns at a place by the angle between its chords to either side, each as long as a small share of a bead. So
 * the chords of a flattened curve are no corners, and a corner with a tiny round is one.
 */
import type { RunLine } from "./runs.js";
import { isCyclic, type Walk, walkLine } from "./walk-line.js";

/** A corner of a line. */
export interface Corner {
  /** Where: index of a side of the line and the share of that side. */
  readonly at: number;
  /** By how much the line turns, radians, 0 to π. */
  readonly turn: number;
}

export interface CornerOptions {
  /** A corner turns by more than this, radians. */
  readonly angle: number;
  /** Length of the chords that are compared, mm. */
  readonly reach: number;
}

/** Vertices of a corner that turn by less than this share of its sharpest one are beside it; where a round begins they turn by half. */
const BESIDE = 0.4;

/** The corners of a line, in its order. The ends of an open line are none. */
export function findCorners(line: RunLine, { angle, reach }: CornerOptions): Corner[] {
  const walk = walkLine(line);
  const cyclic = isCyclic(line);
  const sides = walk.stations.length - 1;
  const sharp: Vertex[] = [];
  for (let i = cyclic ? 0 : 1; i < sides; i++) {
    const s = walk.stations[i];
    const felt = turnAt(walk, s, reach);
    if (felt <= angle) continue;
    const before = s - walk.stations[i > 0 ? i - 1 : 0];
    const after = walk.stations[i + 1] - s;
    const own = turnAt(walk, s, Math.min(reach, after, i > 0 ? before : walk.length - walk.stations[sides - 1]));
    sharp.push({ s, felt, own });
  }
  return cluster(sharp, reach, cyclic ? walk.length : undefined).map((group) => {
    const most = Math.max(...group.map(({ own }) => own));
    const core = group.filter(({ own }) => own >= BESIDE * most);
    return {
      at: walk.locate((core[0].s + core[core.length - 1].s) / 2),
      turn: Math.max(...group.map(({ felt }) => felt)),
    };
  });
}

interface Vertex {
  /** Arc length, mm. */
  readonly s: number;
  /** Turn that a bead feels, and that of the vertex alone, radians. */
  readonly felt: number;
  readonly own: number;
}

/** Vertices in groups, each within `reach` of the next; on a cyclic line of that length also over its start. */
function cluster(vertices: readonly Vertex[], reach: number, length: number | undefined): Vertex[][] {
  const groups: Vertex[][] = [];
  for (const vertex of vertices) {
    const last = groups.at(-1);
    if (last !== undefined && vertex.s - last[last.length - 1].s <= reach) last.push(vertex);
    else groups.push([vertex]);
  }
  const last = groups.at(-1);
  if (length === undefined || groups.length < 2 || last === undefined) return groups;
  if (groups[0][0].s + length - last[last.length - 1].s > reach) return groups;
  const before = last.map((vertex): Vertex => ({ ...vertex, s: vertex.s - length }));
  return [[...before, ...groups[0]], ...groups.slice(1, -1)];
}

function turnAt(walk: Walk, s: number, reach: number): number {
  const [a, b, c] = [walk.pointAt(s - reach), walk.pointAt(s), walk.pointAt(s + reach)];
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]];
  return Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
}
