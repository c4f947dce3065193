/**
 * The mesh as a geometry of three, for viewers.
 */
import { BufferAttribute, BufferGeometry } from "three";
import type { Mesh } from "../../mesh/mesh.js";
import { type ShadingOptions, toBuffers } from "./buffers.js";

/**
 * An indexed geometry with float32 positions in mm and normals. Vertices are split at creases.
 *
 * @throws AnnuletError `mesh-malformed`; as `requireOptions`
 *
 * @example
 * const { mesh } = await build(document, { detail: "draft" });
 * const geometry = toBufferGeometry(mesh); // for a three Mesh
 */
export function toBufferGeometry(mesh: Mesh, options: ShadingOptions = {}): BufferGeometry {
  const { positions, normals, triangles } = toBuffers(mesh, options);
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(positions, 3));
  geometry.setAttribute("normal", new BufferAttribute(normals, 3));
  geometry.setIndex(new BufferAttribute(triangles, 1));
  return geometry;
}
