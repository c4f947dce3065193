/** Reads files with three's own loaders, each triangle with corners of its own. */
import type { Mesh as ThreeMesh } from "three";
import { OBJLoader } from "three/examples/jsm/loaders/OBJLoader.js";
import { STLLoader } from "three/examples/jsm/loaders/STLLoader.js";
import type { Format } from "../../src/export/format.js";
import type { Mesh } from "../../src/mesh/mesh.js";

export function readByThree(format: Format, bytes: Uint8Array): Mesh {
  const attribute = format.extensions.includes(".obj")
    ? (new OBJLoader().parse(new TextDecoder().decode(bytes)).children[0] as ThreeMesh).geometry.attributes.position
    : new STLLoader().parse(bytes.slice().buffer).attributes.position;
  const positions = Float64Array.from(attribute.array);
  return { positions, triangles: Uint32Array.from({ length: positions.length / 3 }, (_, i) => i) };
}
