/**
 * The topology of a mesh that is one unit and its turned images, read in the unit alone.
 *
 * Where moving every number of a vertex on by as many as one unit has maps the triangles onto themselves, edges, fans and
 * pieces come again as well: what holds of each edge that begins in the first unit, and of each fan round one of its
 * vertices, holds of all. That the numbers do so is looked at triangle by triangle and never taken on trust. Which triangles
 * hang together is told by how far each step from one to the next leads round (a graph of voltages: J. L. Gross, T. W. Tucker,
 * Topological Graph Theory, 1987; from memory): the ring is one piece where the unit is, and its closed walks lead to
 * every unit.
 */
import { countingSort, nextEdge, previousEdge } from "../mesh/edges.js";
import type { Mesh } from "../mesh/mesh.js";
import type { Topology } from "./topology.js";

/** One unit's triangles, with where each of their edges leads. */
interface Quotient {
  readonly units: number;
  /** Vertices of a unit, and of the mesh. */
  readonly own: number;
  readonly vertices: number;
  /** Corners of the first unit's triangles, as the mesh numbers them. */
  readonly corners: Uint32Array;
  /** For each of them its number in its own unit, and which unit that is. */
  readonly slot: Uint32Array;
  readonly unit: Uint32Array;
}

/**
 * What the indices say; undefined where they are no unit and its images, and where anything is wrong with them: then the
 * whole mesh has to be read.
 */
export function readTurnedTopology(mesh: Mesh, units: number): Topology | undefined {
  const unit = unitOf(mesh, units);
  if (unit === undefined || repeatsVertex(unit.corners)) return undefined;
  const opposite = matchEdges(unit);
  if (opposite === undefined) return undefined;
  const used = countWholeFans(unit, opposite);
  if (used === undefined || !isOnePiece(unit, opposite)) return undefined;
  const kept = mesh.triangles.length / 3;
  return {
    skip: new Uint8Array(kept),
    kept,
    outOfRange: [],
    repeated: [],
    edges: { count: mesh.triangles.length / 2, open: [], crowded: [] },
    vertices: used * units,
    pinched: [],
    shells: { of: new Int32Array(kept), count: 1 },
  };
}

/** The first unit, where every other one has its triangles, moved on by as many vertices as a unit has. */
function unitOf({ positions, triangles }: Mesh, units: number): Quotient | undefined {
  const vertices = positions.length / 3;
  const each = triangles.length / units;
  if (units < 2 || vertices === 0 || each === 0 || vertices % units !== 0 || each % 3 !== 0) return undefined;
  const own = vertices / units;
  const corners = triangles.subarray(0, each);
  const slot = new Uint32Array(each);
  const unit = new Uint32Array(each);
  for (let i = 0; i < each; i++) {
    if (corners[i] >= vertices) return undefined;
    unit[i] = Math.floor(corners[i] / own);
    slot[i] = corners[i] - unit[i] * own;
  }
  for (let k = 1; k < units; k++) {
    const on = k * own;
    const from = k * each;
    for (let i = 0; i < each; i++) {
      const moved = corners[i] + on;
      if (triangles[from + i] !== (moved < vertices ? moved : moved - vertices)) return undefined;
    }
  }
  return { units, own, vertices, corners, slot, unit };
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
function matchEdges(quotient: Quotient): Int32Array | undefined {
  const { own, vertices, slot } = quotient;
  const leaving = countingSort(slot, own);
  const opposite = new Int32Array(slot.length);
  /** For each end the edge that led to it last: it holds for the origin at hand if it leaves from there. */
  const leadsTo = new Int32Array(vertices).fill(-1);
  for (let from = 0, to = 0; from < leaving.length; from = to) {
    const origin = slot[leaving[from]];
    for (; to < leaving.length && slot[leaving[to]] === origin; to++) {
      const end = seenFrom(quotient, leaving[to], nextEdge(leaving[to]));
      const same = leadsTo[end];
      if (same !== -1 && slot[same] === origin) return undefined;
      leadsTo[end] = leaving[to];
    }
    for (let i = from; i < to; i++) {
      const arriving = previousEdge(leaving[i]);
      const back = leadsTo[seenFrom(quotient, leaving[i], arriving)];
      if (back === -1 || slot[back] !== origin) return undefined;
      opposite[arriving] = back;
    }
  }
  return opposite;
}

/** The vertex at a corner, numbered as if the other corner's unit were the first. */
function seenFrom({ own, vertices, corners, unit }: Quotient, here: number, corner: number): number {
  const moved = corners[corner] - unit[here] * own;
  return moved < 0 ? moved + vertices : moved;
}

/** How many vertices of a unit are used; undefined where one has more than one fan of triangles. */
function countWholeFans({ own, slot }: Quotient, opposite: Int32Array): number | undefined {
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
function isOnePiece({ units, unit }: Quotient, opposite: Int32Array): boolean {
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
      } else stride = commonDivisor(stride, Math.abs(on - met[beside]));
    }
  }
  return known === count && stride === 1;
}

/** Euclid's. */
function commonDivisor(a: number, b: number): number {
  let [more, less] = [a, b];
  while (less > 0) [more, less] = [less, more % less];
  return more;
}
