/** What needs three, as `annulet/three`: meshes as geometries. Its types are those of `@types/three`. */

export type { Mesh } from "../mesh/mesh.js";
export type { ShadingOptions } from "../output/files/buffers.js";
export { toBufferGeometry } from "../output/files/geometry.js";
