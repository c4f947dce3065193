/**
 * Repeats a part of the round about the z axis, by index: each part ends in points of the next one, so no gap can open.
 */
import { TURN } from "../units.js";
import type { Mesh } from "./mesh.js";

/** A part that the next one follows. */
export interface TurnPart {
  readonly mesh: Mesh;
  /** For each vertex at the part's end the one at its start that stands for it in the next part; −1 for all others. */
  readonly follows: Int32Array;
}

/** The part turned to so many places round the axis. */
export function turnRound({ mesh, follows }: TurnPart, places: number): Mesh {
  const count = follows.length;
  const slot = new Int32Array(count);
  let own = 0;
  for (let vertex = 0; vertex < count; vertex++) slot[vertex] = follows[vertex] === -1 ? own++ : -1;
  const positions = new Float64Array(3 * own * places);
  const triangles = new Uint32Array(mesh.triangles.length * places);
  let at = 0;
  for (let place = 0; place < places; place++) {
    const [cos, sin] = [Math.cos((TURN * place) / places), Math.sin((TURN * place) / places)];
    for (let vertex = 0; vertex < count; vertex++) {
      if (slot[vertex] === -1) continue;
      const [x, y] = [mesh.positions[3 * vertex], mesh.positions[3 * vertex + 1]];
      positions[at++] = x * cos - y * sin;
      positions[at++] = x * sin + y * cos;
      positions[at++] = mesh.positions[3 * vertex + 2];
    }
    const [here, next] = [place * own, ((place + 1) % places) * own];
    const base = place * mesh.triangles.length;
    for (let i = 0; i < mesh.triangles.length; i++) {
      const vertex = mesh.triangles[i];
      triangles[base + i] = slot[vertex] === -1 ? next + slot[follows[vertex]] : here + slot[vertex];
    }
  }
  return { positions, triangles };
}
