/**
 * The topology of a mesh that is one unit and its turned images, read in the unit alone.
 *
 * Where moving every number of a vertex on by as many as one unit has maps the triangles onto themselves, edges, fans and
 * pieces come again as well: what holds of each edge that begins in the first unit, and of each fan round one of its
 * vertices, holds of all. That the numbers do so has been looked at (`mesh/turned.ts`). Which triangles
 * hang together is told by how far each step from one to the next leads round (a graph of voltages: J. L. Gross, T. W. Tucker,
 * Topological Graph Theory, 1987; from memory): the ring is one piece where the unit is, and its closed walks lead to
 * every unit.
 */
import { greatestCommon } from "../base/math/greatest-common.js";
import { countingSort, nextEdge, previousEdge } from "../mesh/edges.js";
import type { Turned } from "../mesh/turned.js";

/** What the indices of a sound mesh of one shell say. */
export interface TurnedTopology {
  /** Vertices that some triangle uses. */
  readonly vertices: number;
  readonly edges: number;
  readonly triangles: number;
}

/** Of the whole mesh; undefined where anything is wrong with it or it is in pieces: then the whole has to be read. */
export function readTurnedTopology(turned: Turned): TurnedTopology | undefined {
  if (repeatsVertex(turned.corners)) return undefined;
  const opposite = matchEdges(turned);
  if (opposite === undefined) return undefined;
  const used = countWholeFans(turned, opposite);
  if (used === undefined || !isOnePiece(turned, opposite)) return undefined;
  const { length } = turned.mesh.triangles;
  return { vertices: used * turned.units, edges: length / 2, triangles: length / 3 };
}

function repeatsVertex(corners: Uint32Array): boolean {
  for (let i = 0; i < corners.length; i += 3) {
    const [a, b, c] = [corners[i], corners[i + 1], corners[i + 2]];
    if (a === b || b === c || c === a) return true;
  }
  return false;
}

/**
 * For each directed edge of the unit the one whose image runs the other way, where each has just one; otherwise undefined.
 * An edge is known by its origin's number in its unit and by its end's number as that unit counts.
 */
function matchEdges(turned: Turned): Int32Array | undefined {
  const { mesh, own, slot } = turned;
  const vertices = mesh.positions.length / 3;
  const leaving = countingSort(slot, own);
  const opposite = new Int32Array(slot.length);
  /** For each end the edge that led to it last: it holds for the origin at hand if it leaves from there. */
  const leadsTo = new Int32Array(vertices).fill(-1);
  for (let from = 0, to = 0; from < leaving.length; from = to) {
    const origin = slot[leaving[from]];
    for (; to < leaving.length && slot[leaving[to]] === origin; to++) {
      const end = seenFrom(turned, leaving[to], nextEdge(leaving[to]));
      const same = leadsTo[end];
      if (same !== -1 && slot[same] === origin) return undefined;
      leadsTo[end] = leaving[to];
    }
    for (let i = from; i < to; i++) {
      const arriving = previousEdge(leaving[i]);
      const back = leadsTo[seenFrom(turned, leaving[i], arriving)];
      if (back === -1 || slot[back] !== origin) return undefined;
      opposite[arriving] = back;
    }
  }
  return opposite;
}

/** The vertex at a corner, numbered as if the other corner's unit were the first. */
function seenFrom({ units, own, corners, unit }: Turned, here: number, corner: number): number {
  const moved = corners[corner] - unit[here] * own;
  return moved < 0 ? moved + units * own : moved;
}

/** How many vertices of a unit are used; undefined where one has more than one fan of triangles. */
function countWholeFans({ own, slot }: Turned, opposite: Int32Array): number | undefined {
  const corners = new Uint32Array(own);
  const first = new Int32Array(own).fill(-1);
  for (let i = slot.length - 1; i >= 0; i--) {
    corners[slot[i]]++;
    first[slot[i]] = i;
  }
  let used = 0;
  for (let vertex = 0; vertex < own; vertex++) {
    if (first[vertex] === -1) continue;
    used++;
    let seen = 1;
    // Every edge has its opposite, so the walk comes back.
    for (let at = opposite[previousEdge(first[vertex])]; at !== first[vertex]; at = opposite[previousEdge(at)]) seen++;
    if (seen < corners[vertex]) return undefined;
  }
  return used;
}

/** Whether all triangles of all units hang together by edges. */
function isOnePiece({ units, unit }: Turned, opposite: Int32Array): boolean {
  const count = opposite.length / 3;
  /** In which unit a triangle's image is met first, beginning with the first triangle in unit 0; −1: not yet. */
  const met = new Int32Array(count).fill(-1);
  const waiting = new Int32Array(count);
  met[0] = 0;
  let [done, known] = [0, 1];
  /** Closed walks lead on by multiples of it. */
  let stride = units;
  for (; done < known; done++) {
    const t = waiting[done];
    for (let h = 3 * t; h < 3 * t + 3; h++) {
      const other = opposite[h];
      const on = (met[t] + unit[nextEdge(h)] - unit[other] + units) % units;
      const beside = Math.floor(other / 3);
      if (met[beside] === -1) {
        met[beside] = on;
        waiting[known++] = beside;
      } else stride = greatestCommon(stride, Math.abs(on - met[beside]));
    }
  }
  return known === count && stride === 1;
}
