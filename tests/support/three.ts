/** Reads files with three's own loaders, each triangle with corners of its own, mm. */
import type { Object3D, Mesh as ThreeMesh } from "three";
import { ThreeMFLoader } from "three/examples/jsm/loaders/3MFLoader.js";
import { GLTFLoader } from "three/examples/jsm/loaders/GLTFLoader.js";
import { OBJLoader } from "three/examples/jsm/loaders/OBJLoader.js";
import { STLLoader } from "three/examples/jsm/loaders/STLLoader.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import type { Format } from "../../src/output/files/format.js";
import { withDomParser } from "./dom-parser.js";

/** glTF's unit is the metre. */
const MILLIMETRES_IN_METRE = 1000;

export async function readByThree(format: Format, bytes: Uint8Array): Promise<Mesh> {
  const file = bytes.slice().buffer;
  switch (format.extensions[0]) {
    case ".obj":
      return cornersOf(new OBJLoader().parse(new TextDecoder().decode(bytes)));
    case ".3mf":
      return cornersOf(withDomParser(() => new ThreeMFLoader().parse(file)));
    case ".glb":
      return cornersOf((await new GLTFLoader().parseAsync(file, "")).scene, MILLIMETRES_IN_METRE);
    default:
      return cornersOfPositions(new STLLoader().parse(file).attributes.position.array);
  }
}

/** The corners of all meshes below an object, placed as it says. */
function cornersOf(object: Object3D, scale = 1): Mesh {
  const positions: number[] = [];
  object.updateMatrixWorld(true);
  object.traverse((child) => {
    if (!("isMesh" in child)) return;
    const { geometry, matrixWorld } = child as ThreeMesh;
    const placed = (geometry.index === null ? geometry : geometry.toNonIndexed()).clone();
    const points = placed.attributes.position;
    const { elements: m } = matrixWorld;
    const straight = m[1] === 0 && m[2] === 0 && m[4] === 0 && m[6] === 0 && m[8] === 0 && m[9] === 0;
    if (!straight) throw new Error("these tests write no turned meshes");
    for (let i = 0; i < points.count; i++) {
      // One product, so that a scale of 0.001 · 1000 leaves every float32 as it is.
      positions.push(points.getX(i) * round(m[0] * scale) + m[12] * scale);
      positions.push(points.getY(i) * round(m[5] * scale) + m[13] * scale);
      positions.push(points.getZ(i) * round(m[10] * scale) + m[14] * scale);
    }
  });
  return cornersOfPositions(positions);
}

function round(value: number): number {
  return Number(value.toPrecision(12));
}

function cornersOfPositions(numbers: ArrayLike<number>): Mesh {
  const positions = Float64Array.from(numbers);
  return { positions, triangles: Uint32Array.from({ length: positions.length / 3 }, (_, i) => i) };
}
