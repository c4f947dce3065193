/**
 * Cuts a mesh at a plane and leaves it open there. Points near the plane are put exactly on it, and both triangles of an
 * edge are cut at the same point, so the rim is a clean line in the plane.
 */
import { distanceTo, type HalfSpace } from "../base/math/half-space.js";
import type { Mesh } from "./mesh.js";

export interface Clipped {
  readonly mesh: Mesh;
  /** For each vertex the bits it had, and the plane's bit where it lies on the plane. */
  readonly marks: Uint8Array;
  /** Where each vertex lies in another shape of the mesh; only where that was given. */
  readonly carried?: Float64Array;
}

export interface ClipOptions {
  /** Points at most this far from the plane are put on it, mm. 0 or more. */
  readonly reach: number;
  /** Bits that each vertex of the mesh carries already. Default none. */
  readonly marks?: Uint8Array;
  /** Bit of this plane. Default 1. */
  readonly bit?: number;
  /** Where the vertices lie in another shape of the mesh: it is cut at the same points of its edges. Default none. */
  readonly carried?: Float64Array | undefined;
}

/** The part of a mesh in a half space, open at its plane. What lies in the plane itself is left out. */
export function clipMesh(mesh: Mesh, keep: HalfSpace, { reach, marks, bit = 1, carried }: ClipOptions): Clipped {
  const count = mesh.positions.length / 3;
  const distance = new Float64Array(count);
  const positions: number[] = [];
  const bits: number[] = [];
  const others: number[] = [];
  const slot = new Int32Array(count).fill(-1);
  const cuts = new Map<number, number>();
  const triangles: number[] = [];

  for (let i = 0; i < count; i++) {
    const d = distanceTo(keep, mesh.positions[3 * i], mesh.positions[3 * i + 1], mesh.positions[3 * i + 2]);
    distance[i] = Math.abs(d) <= reach ? 0 : d;
  }
  const add = (x: number, y: number, z: number, own: number, on: boolean): number => {
    const off = on ? distanceTo(keep, x, y, z) : 0;
    const [nx, ny, nz] = keep.normal;
    positions.push(x - off * nx, y - off * ny, z - off * nz);
    bits.push(own | (on ? bit : 0));
    return bits.length - 1;
  };
  const vertex = (i: number): number => {
    if (slot[i] === -1) {
      const p = mesh.positions;
      slot[i] = add(p[3 * i], p[3 * i + 1], p[3 * i + 2], marks?.[i] ?? 0, distance[i] === 0);
      if (carried !== undefined) others.push(carried[3 * i], carried[3 * i + 1], carried[3 * i + 2]);
    }
    return slot[i];
  };
  /** The vertex where an edge meets the plane; it keeps what marks both ends have. */
  const crossing = (i: number, j: number): number => {
    const [a, b] = i < j ? [i, j] : [j, i];
    const key = a * count + b;
    const known = cuts.get(key);
    if (known !== undefined) return known;
    const t = distance[a] / (distance[a] - distance[b]);
    const at = (p: Float64Array, k: number) => p[3 * a + k] + t * (p[3 * b + k] - p[3 * a + k]);
    const p = mesh.positions;
    const made = add(at(p, 0), at(p, 1), at(p, 2), (marks?.[a] ?? 0) & (marks?.[b] ?? 0), true);
    if (carried !== undefined) others.push(at(carried, 0), at(carried, 1), at(carried, 2));
    cuts.set(key, made);
    return made;
  };

  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const corner = [mesh.triangles[t], mesh.triangles[t + 1], mesh.triangles[t + 2]];
    const inside = corner.filter((i) => distance[i] < 0).length;
    const outside = corner.filter((i) => distance[i] > 0).length;
    if (inside === 0) continue;
    if (outside === 0) {
      triangles.push(vertex(corner[0]), vertex(corner[1]), vertex(corner[2]));
      continue;
    }
    // The corner that is alone: with one on the plane the one outside, else the only one on its side.
    const lone = corner.findIndex((i) => (inside === 1 && outside === 2 ? distance[i] < 0 : distance[i] > 0));
    const [a, b, c] = [corner[lone], corner[(lone + 1) % 3], corner[(lone + 2) % 3]];
    if (distance[a] < 0) triangles.push(vertex(a), crossing(a, b), crossing(a, c));
    else if (inside === 2) {
      const [p, q] = [crossing(a, b), crossing(a, c)];
      triangles.push(p, vertex(b), vertex(c), p, vertex(c), q);
    } else if (distance[b] === 0) triangles.push(vertex(b), vertex(c), crossing(a, c));
    else triangles.push(crossing(a, b), vertex(b), vertex(c));
  }
  return {
    mesh: { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) },
    marks: Uint8Array.from(bits),
    ...(carried === undefined ? {} : { carried: Float64Array.from(others) }),
  };
}
