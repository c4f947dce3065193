/**
 * What a mesh must be to be written in single precision, and the facets that it then has: their normals are those of the
 * rounded corners.
 */
import { AnnuletError } from "../../../base/errors.js";
import type { Mesh } from "../../../mesh/mesh.js";
import { requireSound } from "../../../mesh/sound.js";

/** @throws AnnuletError `mesh-malformed`, also when a coordinate is too large for float32 */
export function requireFloat32(mesh: Mesh): void {
  requireSound(mesh);
  const { positions } = mesh;
  for (let i = 0; i < positions.length; i++) {
    if (Number.isFinite(Math.fround(positions[i]))) continue;
    throw new AnnuletError({
      code: "mesh-malformed",
      message: `a coordinate of vertex ${Math.floor(i / 3)} is too large for a single-precision file`,
      value: positions[i],
      allowed: "less than 3.4e38 mm",
    });
  }
}

/** Numbers of a facet: its normal and three corners. */
export const FACET_NUMBERS = 12;

/**
 * Puts a triangle's unit normal and its three corners into `facet`: corners rounded to float32, −0 as 0;
 * the normal of a triangle without area is 0, 0, 0.
 *
 * @param t where the triangle's three indices begin
 */
export function fillFacet({ positions: p, triangles }: Mesh, t: number, facet: Float64Array): void {
  const a = 3 * triangles[t];
  const b = 3 * triangles[t + 1];
  const c = 3 * triangles[t + 2];
  const ax = Math.fround(p[a]) + 0;
  const ay = Math.fround(p[a + 1]) + 0;
  const az = Math.fround(p[a + 2]) + 0;
  const bx = Math.fround(p[b]) + 0;
  const by = Math.fround(p[b + 1]) + 0;
  const bz = Math.fround(p[b + 2]) + 0;
  const cx = Math.fround(p[c]) + 0;
  const cy = Math.fround(p[c + 1]) + 0;
  const cz = Math.fround(p[c + 2]) + 0;
  const nx = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
  const ny = (bz - az) * (cx - ax) - (bx - ax) * (cz - az);
  const nz = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  const length = Math.sqrt(nx * nx + ny * ny + nz * nz);
  const scale = length === 0 ? 0 : 1 / length;
  facet[0] = nx * scale + 0;
  facet[1] = ny * scale + 0;
  facet[2] = nz * scale + 0;
  facet[3] = ax;
  facet[4] = ay;
  facet[5] = az;
  facet[6] = bx;
  facet[7] = by;
  facet[8] = bz;
  facet[9] = cx;
  facet[10] = cy;
  facet[11] = cz;
}
