/**
 * The reference: a whole-ring union by manifold-3d itself, without annulet's kernel between, so that it stays what it
 * is when annulet changes. Meshes in, mesh out: what a caller has to pay for.
 */
import loadManifold, { type Manifold } from "manifold-3d";
import type { Mesh } from "../src/mesh/mesh.js";

export const wasm = await loadManifold();
wasm.setup();

export function manifoldUnion(bodies: readonly Mesh[]): Mesh {
  const owned: Manifold[] = [];
  try {
    for (const { positions, triangles } of bodies) {
      const mesh = new wasm.Mesh({ numProp: 3, vertProperties: Float32Array.from(positions), triVerts: triangles });
      owned.push(new wasm.Manifold(mesh));
    }
    const sum = wasm.Manifold.union([...owned]);
    owned.push(sum);
    // The library works when the result is read, not before.
    const { vertProperties, triVerts } = sum.getMesh();
    return { positions: Float64Array.from(vertProperties), triangles: triVerts };
  } finally {
    for (const solid of owned) solid.delete();
  }
}
