/**
 * Signed volume: the sum of the tetrahedra from one point to every triangle, a · (b × c) / 6, which follows from the
 * divergence theorem. The point is the middle of the mesh's box, so that a mesh far from the origin loses no digits.
 */
import { boundsCentre, meshBounds } from "./bounds.js";
import type { Mesh } from "./mesh.js";

/**
 * Signed volume, mm³: positive when a closed mesh faces outward. Of a mesh that is not closed the number depends on
 * where its box lies and means nothing.
 */
export function signedVolume(mesh: Mesh): number {
  return volumesByLabel(mesh, new Int32Array(mesh.triangles.length / 3), 1)[0];
}

/**
 * Signed volume of each shell, mm³.
 *
 * @param label for each triangle its shell, from 0 to `count` − 1; a negative label leaves the triangle out
 */
export function volumesByLabel(mesh: Mesh, label: Int32Array, count: number): Float64Array {
  const { positions: p, triangles } = mesh;
  const [ox, oy, oz] = boundsCentre(meshBounds(mesh));
  const volumes = new Float64Array(count);
  for (let t = 0; t < label.length; t++) {
    if (label[t] < 0) continue;
    const a = 3 * triangles[3 * t];
    const b = 3 * triangles[3 * t + 1];
    const c = 3 * triangles[3 * t + 2];
    const ax = p[a] - ox;
    const ay = p[a + 1] - oy;
    const az = p[a + 2] - oz;
    const bx = p[b] - ox;
    const by = p[b + 1] - oy;
    const bz = p[b + 2] - oz;
    const cx = p[c] - ox;
    const cy = p[c + 1] - oy;
    const cz = p[c + 2] - oz;
    volumes[label[t]] += (ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6;
  }
  return volumes;
}
