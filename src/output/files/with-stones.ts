/**
 * A mesh with its stones beside it, for formats that hold nothing but triangles.
 */
import { concatMeshes, type Mesh } from "../../mesh/mesh.js";
import { transformMesh } from "../../mesh/transform.js";
import type { FileStone } from "./file-stone.js";

/** All in one mesh: each stone is a closed body of its own in it, and is not united with the metal. */
export function withStones(mesh: Mesh, stones: readonly FileStone[]): Mesh {
  if (stones.length === 0) return mesh;
  const placed = stones.map((stone) =>
    transformMesh(stone.mesh, [...stone.map] as Parameters<typeof transformMesh>[1]),
  );
  return concatMeshes([mesh, ...placed]);
}
