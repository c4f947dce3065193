/**
 * A shaded mesh as glTF holds it.
 */
import type { Buffer, Document, Primitive } from "@gltf-transform/core";
import type { Buffers } from "../../../mesh/normals.js";

/** Positions, unit normals and indices, without a material. */
export function shadedPrimitive(
  document: Document,
  buffer: Buffer,
  { positions, normals, triangles }: Buffers,
): Primitive {
  const triples = (values: Float32Array) =>
    document
      .createAccessor()
      .setType("VEC3")
      // No −0: it prints and compares as another number.
      .setArray(values.map((value) => value + 0))
      .setBuffer(buffer);
  return document
    .createPrimitive()
    .setAttribute("POSITION", triples(positions))
    .setAttribute("NORMAL", triples(someNormals(normals)))
    .setIndices(document.createAccessor().setType("SCALAR").setArray(triangles).setBuffer(buffer));
}

/** glTF wants unit normals: a vertex of triangles without area gets one that is as good as any. */
function someNormals(normals: Float32Array): Float32Array {
  for (let i = 0; i < normals.length; i += 3) {
    if (normals[i] === 0 && normals[i + 1] === 0 && normals[i + 2] === 0) normals[i + 2] = 1;
  }
  return normals;
}
