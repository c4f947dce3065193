/**
 * Times annulet's readers against three's loaders on the same million triangles. Annulet makes equal points one vertex
 * and checks that all are finite, which the loaders leave to whoever calls them. three's loader of 3MF needs a browser.
 */
import { GLTFLoader } from "three/addons/loaders/GLTFLoader.js";
import { OBJLoader } from "three/addons/loaders/OBJLoader.js";
import { STLLoader } from "three/addons/loaders/STLLoader.js";
import { checkSolid } from "../src/judge/gate.js";
import { checkWalls } from "../src/judge/walls.js";
import { findBore } from "../src/measure/bore/bore.js";
import { measureMesh } from "../src/measure/measure.js";
import { encodeMesh, type Format } from "../src/output/files/format.js";
import { glb } from "../src/output/files/formats/glb.js";
import { obj } from "../src/output/files/formats/obj.js";
import { stlAscii } from "../src/output/files/formats/stl-ascii.js";
import { stlBinary } from "../src/output/files/formats/stl-binary.js";
import { threemf } from "../src/output/files/formats/threemf.js";
import { readMesh } from "../src/output/files/read-mesh.js";
import { type Checksum, checksumOf } from "./checksum.js";
import type { Effort } from "./effort.js";
import { timeTask } from "./time-task.js";
import { TORUS, torus } from "./torus.js";
import type { WritingTiming } from "./writing.js";

export interface Reading {
  /** Of the mesh that is read last. */
  readonly checksum: Checksum;
  readonly timings: readonly WritingTiming[];
}

type Load = (bytes: Uint8Array<ArrayBuffer>) => unknown;

const loadStl: Load = (bytes) => new STLLoader().parse(bytes.buffer);
const loaders: readonly (readonly [Format, string?, Load?])[] = [
  [stlBinary, "three STLLoader, binary", loadStl],
  [stlAscii, "three STLLoader, text", loadStl],
  [obj, "three OBJLoader", (bytes) => new OBJLoader().parse(new TextDecoder().decode(bytes))],
  [glb, "three GLTFLoader", (bytes) => new GLTFLoader().parseAsync(bytes.buffer, "")],
  [threemf],
];

/** What `annulet inspect` works out. */
async function inspect(bytes: Uint8Array) {
  const mesh = await readMesh(bytes, "torus.stl");
  const check = checkSolid(mesh);
  const { inertia } = measureMesh(mesh);
  return { check, bore: findBore(mesh, { inertia }), walls: checkWalls(mesh, { places: 1 }) };
}

export async function timeReading(effort: Effort): Promise<Reading> {
  process.stderr.write("reading\n");
  const mesh = torus(TORUS.around, TORUS.across);
  const timings: WritingTiming[] = [];
  let checksum = checksumOf(mesh);
  for (const [format, name, load] of loaders) {
    const bytes = new Uint8Array(await encodeMesh(format, mesh, { name: "torus" }));
    const theirs = load && (await timeTask({ name: name ?? "", run: () => load(bytes) }, effort)).timing;
    const run = () => readMesh(bytes, `torus${format.extensions[0]}`);
    const { timing, result } = await timeTask({ name: `annulet ${format.name}`, run }, effort);
    if (theirs !== undefined) timings.push({ ...theirs, bytes: bytes.length, ratio: 1 });
    timings.push({ ...timing, bytes: bytes.length, ratio: theirs && timing.median / theirs.median });
    checksum = checksumOf(result);
  }
  const stl = await encodeMesh(stlBinary, mesh, { name: "torus" });
  const { timing } = await timeTask({ name: "all that inspect asks of stl-binary", run: () => inspect(stl) }, effort);
  timings.push({ ...timing, bytes: stl.length, ratio: undefined });
  return { checksum, timings };
}
