/**
 * The edge table of a unit whose images make up a ring: edges at its ends match those of its own other end, one image on.
 */
import { buildEdgeTable, type EdgeTable, nextEdge } from "./edges.js";
import type { Turned } from "./turned.js";

/**
 * The table, by places in the unit's corners; triangles that repeat a vertex are left out. Undefined where several edges run between
 * the same vertices of the unit and its images, so that it is not clear which of them meet.
 */
export function unitEdges(turned: Turned): EdgeTable | undefined {
  const { mesh, own, corners, slot } = turned;
  const skip = repeating(corners);
  // A triangle between a vertex and its own image would be taken for one without area.
  if (repeating(slot).some((repeats, t) => repeats !== skip[t])) return undefined;
  // The table asks for the number of vertices alone.
  const table = buildEdgeTable({ positions: mesh.positions.subarray(0, 3 * own), triangles: slot }, skip);
  return table.crowded.length === 0 && arePairs(turned, table.opposite) ? table : undefined;
}

/** How many images on the triangle at directed edge `back` meets the one at `h`: 0 up to the number of units. */
export function imagesOn({ units, unit }: Turned, h: number, back: number): number {
  const on = unit[h] - unit[nextEdge(back)];
  return on < 0 ? on + units : on;
}

/** Whether matched edges run between the same images of their vertices at both ends: one way on undoes the way back. */
function arePairs(turned: Turned, opposite: Int32Array): boolean {
  for (let h = 0; h < opposite.length; h++) {
    const back = opposite[h];
    if (back > h && (imagesOn(turned, h, back) + imagesOn(turned, back, h)) % turned.units !== 0) return false;
  }
  return true;
}

/** 1 for each triangle that repeats a vertex. */
export function repeating(triangles: Uint32Array): Uint8Array {
  const repeats = new Uint8Array(triangles.length / 3);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t], triangles[t + 1], triangles[t + 2]];
    if (a === b || b === c || c === a) repeats[t / 3] = 1;
  }
  return repeats;
}
