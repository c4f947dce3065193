/**
 * The facets of an STL file: coordinates rounded to float32 once, and normals of those rounded corners.
 */
import { AnnuletError } from "../../errors.js";
import type { Mesh } from "../../mesh/mesh.js";
import { unitFaceNormals } from "../../mesh/normals.js";
import { requireSound } from "../../mesh/sound.js";

export interface Facets {
  /** Rounded to float32, −0 as 0, mm. */
  readonly positions: Float64Array;
  /** Unit normal of each triangle's rounded corners; 0, 0, 0 for a triangle without area. */
  readonly normals: Float64Array;
}

/** @throws AnnuletError `mesh-malformed`, also when a coordinate is too large for float32 */
export function roundFacets(mesh: Mesh): Facets {
  requireSound(mesh);
  const positions = mesh.positions.map((value) => Math.fround(value) + 0);
  const tooLarge = positions.findIndex((value) => !Number.isFinite(value));
  if (tooLarge !== -1) {
    throw new AnnuletError({
      code: "mesh-malformed",
      message: `a coordinate of vertex ${Math.floor(tooLarge / 3)} is too large for a single-precision file`,
      value: mesh.positions[tooLarge],
      allowed: "less than 3.4e38 mm",
    });
  }
  return { positions, normals: unitFaceNormals({ positions, triangles: mesh.triangles }) };
}
