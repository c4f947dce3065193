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
  const slot = slotsOf(part.follows).slot;
  for (const start of part.follows) if (start !== -1) marks[slot[start]] |= START;
  return { mesh, marks };
}

/** New numbers of the vertices that a part has for itself; −1 for those of the next part. */
function slotsOf(follows: Int32Array): { slot: Int32Array; own: number } {
  const slot = new Int32Array(follows.length);
  let own = 0;
  for (let vertex = 0; vertex < follows.length; vertex++) slot[vertex] = follows[vertex] === -1 ? own++ : -1;
  return { slot, own };
}

function turnTo(
  { mesh, follows }: TurnPart,
  places: number,
  first: number,
  count: number,
  closed: boolean,
): { mesh: Mesh; own: number } {
  const { slot, own } = slotsOf(follows);
  // Numbers of the start's vertices among those that an open chain has at its end.
  const last = new Int32Array(follows.length).fill(-1);
  let more = 0;
  if (!closed) for (const start of follows) if (start !== -1 && last[start] === -1) last[start] = more++;
  const positions = new Float64Array(3 * (own * count + more));
  const triangles = new Uint32Array(mesh.triangles.length * count);
  const place = (vertex: number, at: number, [cos, sin]: readonly [number, number]) => {
    const [x, y] = [mesh.positions[3 * vertex], mesh.positions[3 * vertex + 1]];
    positions[3 * at] = x * cos - y * sin;
    positions[3 * at + 1] = x * sin + y * cos;
    positions[3 * at + 2] = mesh.positions[3 * vertex + 2];
  };
  const turn = (number: number) => {
    const angle = (TURN * (first + number)) / places;
    return [Math.cos(angle), Math.sin(angle)] as const;
  };
  for (let number = 0; number < count; number++) {
    const by = turn(number);
    const here = number * own;
    for (let vertex = 0; vertex < slot.length; vertex++)
      if (slot[vertex] !== -1) place(vertex, here + slot[vertex], by);
    const isLast = number === count - 1;
    const next = isLast ? 0 : here + own;
    const base = number * mesh.triangles.length;
    for (let i = 0; i < mesh.triangles.length; i++) {
      const vertex = mesh.triangles[i];
      if (slot[vertex] !== -1) triangles[base + i] = here + slot[vertex];
      else if (isLast && !closed) triangles[base + i] = own * count + last[follows[vertex]];
      else triangles[base + i] = next + slot[follows[vertex]];
    }
  }
  const by = turn(count);
  for (let vertex = 0; vertex < last.length; vertex++)
    if (last[vertex] !== -1) place(vertex, own * count + last[vertex], by);
  return { mesh: { positions, triangles }, own };
}
