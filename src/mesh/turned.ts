/**
 * A mesh that is one unit and its images turned round the z axis: what is read in the unit then holds of all of it.
 *
 * That it is so is looked at and never taken on trust: moving every number of a vertex on by as many as one unit has maps the
 * triangles onto themselves, and turning a unit's vertices puts them where the next one's are.
 */
import { TURN } from "../base/units.js";
import type { Mesh } from "./mesh.js";

/** A mesh that was seen to be one unit and its turned images. */
export interface Turned {
  readonly mesh: Mesh;
  /** How many units. */
  readonly units: number;
  /** Vertices of a unit. */
  readonly own: number;
  /** Corners of the first unit's triangles, as the mesh numbers them. */
  readonly corners: Uint32Array;
  /** For each of them its number in its own unit, and which unit that is. */
  readonly slot: Uint32Array;
  readonly unit: Uint32Array;
}

/**
 * How far a vertex may lie from where its unit's turn puts it, along the three axes together, mm: some thousand times what
 * double precision leaves of a ring's coordinates, a hundred thousandth of a step of single precision.
 */
export const OFF_IMAGE = 1e-11;

/** The first unit, where every other one is its image; undefined where the mesh is not so many turned images of a unit. */
export function turnedImages(mesh: Mesh, units: number): Turned | undefined {
  const { positions, triangles } = mesh;
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
    if (!areMovedOn(triangles, corners, k * each, k * own, vertices)) return undefined;
    if (!areTurned(positions, 3 * own, k, units)) return undefined;
  }
  return areFinite(positions, 3 * own) ? { mesh, units, own, corners, slot, unit } : undefined;
}

/** The mesh as one unit and its turned images in every way that it can be seen so, the most units first; none where it is no such mesh. */
export function* findTurned(mesh: Mesh): Generator<Turned, void> {
  const [vertices, faces] = [mesh.positions.length / 3, mesh.triangles.length / 3];
  for (let units = Math.min(vertices, faces); units >= 2; units--) {
    if (vertices % units !== 0 || faces % units !== 0 || !mayBeTurned(mesh, units)) continue;
    const turned = turnedImages(mesh, units);
    if (turned !== undefined) yield turned;
  }
}

/** Any mesh as the one unit that it is made of. */
export function asOneUnit(mesh: Mesh): Turned {
  const { positions, triangles } = mesh;
  const unit = new Uint32Array(triangles.length);
  return { mesh, units: 1, own: positions.length / 3, corners: triangles, slot: triangles, unit };
}

/** Whether the first corner and the first vertex come again one unit on: what is no such ring is seen by that at once. */
function mayBeTurned({ positions, triangles }: Mesh, units: number): boolean {
  const vertices = positions.length / 3;
  const own = vertices / units;
  if (triangles[triangles.length / units] !== (triangles[0] + own) % vertices) return false;
  const angle = TURN / units;
  return offImage(positions, 0, 3 * own, Math.cos(angle), Math.sin(angle)) <= OFF_IMAGE;
}

/** Whether the corners from a place on are the first unit's, so many vertices on. */
function areMovedOn(triangles: Uint32Array, corners: Uint32Array, from: number, on: number, vertices: number): boolean {
  for (let i = 0; i < corners.length; i++) {
    const moved = corners[i] + on;
    if (triangles[from + i] !== (moved < vertices ? moved : moved - vertices)) return false;
  }
  return true;
}

/** Whether the coordinates of unit `k` are those of the first one, turned. */
function areTurned(p: Float64Array, length: number, k: number, units: number): boolean {
  const angle = (TURN * k) / units;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const on = k * length;
  for (let i = 0; i < length; i += 3) if (!(offImage(p, i, on + i, cos, sin) <= OFF_IMAGE)) return false;
  return true;
}

/** How far the point at one place of the coordinates, turned, lies from the point at another, along the three axes together. */
function offImage(p: Float64Array, at: number, image: number, cos: number, sin: number): number {
  const x = p[at];
  const y = p[at + 1];
  const offX = Math.abs(x * cos - y * sin - p[image]);
  const offY = Math.abs(x * sin + y * cos - p[image + 1]);
  return offX + offY + Math.abs(p[at + 2] - p[image + 2]);
}

function areFinite(p: Float64Array, length: number): boolean {
  for (let i = 0; i < length; i++) if (!Number.isFinite(p[i])) return false;
  return true;
}

/** The triangles of the first unit, over all vertices. */
export function firstUnit({ mesh, corners }: Turned): Mesh {
  return { positions: mesh.positions, triangles: corners };
}

/** Whether some triangle uses each of the vertices. */
export function usesAll({ own, slot }: Turned): boolean {
  const used = new Uint8Array(own);
  for (let i = 0; i < slot.length; i++) used[slot[i]] = 1;
  return !used.includes(0);
}

/**
 * All images of some of the unit's triangles, as a mesh of their own: three vertices each.
 *
 * @param chosen numbers of triangles of the first unit
 * @param put what becomes of each coordinate. Default: nothing
 */
export function imagesOf({ mesh, units, corners }: Turned, chosen: readonly number[], put = (x: number) => x): Mesh {
  const { positions: p, triangles } = mesh;
  const positions = new Float64Array(9 * units * chosen.length);
  let at = 0;
  for (let k = 0; k < units; k++) {
    for (const t of chosen) {
      for (let i = k * corners.length + 3 * t, end = i + 3; i < end; i++) {
        for (let axis = 0; axis < 3; axis++) positions[at++] = put(p[3 * triangles[i] + axis]);
      }
    }
  }
  return { positions, triangles: Uint32Array.from({ length: positions.length / 3 }, (_, i) => i) };
}
