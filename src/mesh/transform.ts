/**
 * Affine maps of meshes, with the winding kept outward.
 */
import type { ReadonlyMat4 } from "gl-matrix";
import { AnnuletError } from "../base/errors.js";
import type { Mesh } from "./mesh.js";

/**
 * The mesh under an affine map, column-major as in gl-matrix. A map that mirrors turns the triangles round, so that
 * they stay counter-clockwise seen from outside. gl-matrix builds Float32Array matrices by default; pass it a plain
 * array of 16 numbers as the output to keep double precision.
 *
 * @throws AnnuletError `transform-invalid` when the map is not affine, not finite, or flattens space
 */
export function transformMesh(mesh: Mesh, matrix: ReadonlyMat4): Mesh {
  const m = matrix;
  const determinant =
    m[0] * (m[5] * m[10] - m[6] * m[9]) - m[4] * (m[1] * m[10] - m[2] * m[9]) + m[8] * (m[1] * m[6] - m[2] * m[5]);
  const affine = m[3] === 0 && m[7] === 0 && m[11] === 0 && m[15] === 1;
  const finite = Number.isFinite(m[12] + m[13] + m[14] + determinant);
  if (!affine || !finite || determinant === 0) {
    throw new AnnuletError({
      code: "transform-invalid",
      message: "the matrix is not an affine map of space onto itself",
      value: Array.from(m),
      allowed: "finite numbers, last row 0 0 0 1, determinant not 0",
    });
  }
  const { positions, triangles } = mesh;
  const moved = new Float64Array(positions.length);
  for (let i = 0; i < positions.length; i += 3) {
    const x = positions[i];
    const y = positions[i + 1];
    const z = positions[i + 2];
    moved[i] = m[0] * x + m[4] * y + m[8] * z + m[12];
    moved[i + 1] = m[1] * x + m[5] * y + m[9] * z + m[13];
    moved[i + 2] = m[2] * x + m[6] * y + m[10] * z + m[14];
  }
  const result = { positions: moved, triangles: triangles.slice() };
  return determinant < 0 ? reverseMesh(result) : result;
}

/** The same surface seen from its other side: every triangle runs the other way round, from the same first vertex. */
export function reverseMesh(mesh: Mesh): Mesh {
  const triangles = mesh.triangles.slice();
  for (let t = 0; t < triangles.length; t += 3) {
    triangles[t + 1] = mesh.triangles[t + 2];
    triangles[t + 2] = mesh.triangles[t + 1];
  }
  return { positions: mesh.positions.slice(), triangles };
}
