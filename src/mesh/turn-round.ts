/**
 * Repeats a part of the round about the z axis, by index: each part ends in points of the next one, so no gap can open.
 */
import { TURN } from "../base/units.js";
import type { Clipped } from "./clip.js";
import type { Mesh } from "./mesh.js";

/** A part that the next one follows. */
export interface TurnPart {
  readonly mesh: Mesh;
  /** For each vertex at the part's end the one at its start that stands for it in the next part; −1 for all others. */
  readonly follows: Int32Array;
}

/** Bits of the points at the start and at the end of a part of the round. */
export const START = 1;
export const END = 2;

/** The part turned to so many places round the axis. */
export function turnRound(part: TurnPart, places: number): Mesh {
  return turnTo(part, places, 0, places, true).mesh;
}

/**
 * The part turned to some of so many places round the axis, open at both ends.
 *
 * @param first number of the first of them
 * @param count at least 1, fewer than all
 */
export function turnChain(part: TurnPart, places: number, first: number, count: number): Clipped {
  const { mesh, own } = turnTo(part, places, first, count, false);
  const marks = new Uint8Array(mesh.positions.length / 3).fill(END, own * count);
  const { slot } = numberVertices(part.follows);
  for (const start of part.follows) if (start !== -1) marks[slot[start]] |= START;
  return { mesh, marks };
}

/** Numbers of a part's vertices in a chain of them. */
interface Numbering {
  /** For each vertex its number among those that the part has for itself, or that of the next part's that stands for it. */
  readonly slot: Int32Array;
  /** 1 for each vertex that is the next part's. */
  readonly isNext: Uint8Array;
  /** How many vertices a part has for itself. */
  readonly own: number;
}

function numberVertices(follows: Int32Array): Numbering {
  const slot = new Int32Array(follows.length);
  const isNext = new Uint8Array(follows.length);
  let own = 0;
  for (let vertex = 0; vertex < follows.length; vertex++) {
    if (follows[vertex] === -1) slot[vertex] = own++;
    else isNext[vertex] = 1;
  }
  for (let vertex = 0; vertex < follows.length; vertex++)
    if (isNext[vertex] === 1) slot[vertex] = slot[follows[vertex]];
  return { slot, isNext, own };
}

function turnTo(
  { mesh, follows }: TurnPart,
  places: number,
  first: number,
  count: number,
  closed: boolean,
): { mesh: Mesh; own: number } {
  const { slot, isNext, own } = numberVertices(follows);
  const { triangles: corners } = mesh;
  // Numbers of the start's vertices among those that an open chain has at its end.
  const last = new Int32Array(closed ? 0 : follows.length).fill(-1);
  let more = 0;
  if (!closed) for (const start of follows) if (start !== -1 && last[start] === -1) last[start] = more++;
  const positions = new Float64Array(3 * (own * count + more));
  const triangles = new Uint32Array(corners.length * count);
  // Points of the part's own vertices alone, and its corners as the first place has them.
  const points = own === follows.length ? mesh.positions : pick(mesh.positions, isNext, own);
  const corner = new Uint32Array(corners.length);
  for (let i = 0; i < corners.length; i++) corner[i] = slot[corners[i]] + own * isNext[corners[i]];
  for (let number = 0; number < count; number++) {
    const here = number * own;
    turnInto(positions, 3 * here, points, (TURN * (first + number)) / places);
    const base = number * corners.length;
    if (number < count - 1) {
      for (let i = 0; i < corner.length; i++) triangles[base + i] = here + corner[i];
      continue;
    }
    for (let i = 0; i < corners.length; i++) {
      const vertex = corners[i];
      if (isNext[vertex] === 0) triangles[base + i] = here + slot[vertex];
      else triangles[base + i] = closed ? slot[vertex] : own * count + last[follows[vertex]];
    }
  }
  if (more > 0) {
    const starts = new Float64Array(3 * more);
    last.forEach((at, vertex) => {
      if (at !== -1) starts.set(mesh.positions.subarray(3 * vertex, 3 * vertex + 3), 3 * at);
    });
    turnInto(positions, 3 * own * count, starts, (TURN * (first + count)) / places);
  }
  return { mesh: { positions, triangles }, own };
}

/** Points of those vertices that are the part's own, in their order. */
function pick(positions: Float64Array, isNext: Uint8Array, own: number): Float64Array {
  const points = new Float64Array(3 * own);
  for (let vertex = 0, at = 0; vertex < isNext.length; vertex++) {
    if (isNext[vertex] === 1) continue;
    points[at++] = positions[3 * vertex];
    points[at++] = positions[3 * vertex + 1];
    points[at++] = positions[3 * vertex + 2];
  }
  return points;
}

/** Writes points turned about the z axis from a place on. */
function turnInto(positions: Float64Array, from: number, points: Float64Array, angle: number): void {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  for (let i = 0; i < points.length; i += 3) {
    const x = points[i];
    const y = points[i + 1];
    positions[from + i] = x * cos - y * sin;
    positions[from + i + 1] = x * sin + y * cos;
    positions[from + i + 2] = points[i + 2];
  }
}
