/**
 * The triangle mesh that every stage hands on, as typed arrays.
 */

/** A triangle mesh. Triangles are counter-clockwise seen from outside. */
export interface Mesh {
  /** x, y, z of each vertex in turn, mm. Length 3 × vertices. */
  readonly positions: Float64Array;
  /** Three vertex indices a triangle. Length 3 × triangles. */
  readonly triangles: Uint32Array;
}

/** Number of vertices. */
export function vertexCount(mesh: Mesh): number {
  return mesh.positions.length / 3;
}

/** Number of triangles. */
export function triangleCount(mesh: Mesh): number {
  return mesh.triangles.length / 3;
}

/** Lays meshes side by side in one; vertices are not merged. */
export function concatMeshes(meshes: readonly Mesh[]): Mesh {
  const positions = new Float64Array(meshes.reduce((sum, mesh) => sum + mesh.positions.length, 0));
  const triangles = new Uint32Array(meshes.reduce((sum, mesh) => sum + mesh.triangles.length, 0));
  let atPosition = 0;
  let atTriangle = 0;
  for (const mesh of meshes) {
    positions.set(mesh.positions, atPosition);
    const offset = atPosition / 3;
    for (let i = 0; i < mesh.triangles.length; i++) triangles[atTriangle + i] = mesh.triangles[i] + offset;
    atPosition += mesh.positions.length;
    atTriangle += mesh.triangles.length;
  }
  return { positions, triangles };
}
