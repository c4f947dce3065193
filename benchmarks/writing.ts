/**
 * Times annulet's writers against three's exporters on the same million triangles.
 */
import * as three from "three";
import { OBJExporter } from "three/addons/exporters/OBJExporter.js";
import { STLExporter } from "three/addons/exporters/STLExporter.js";
import { obj } from "../src/export/formats/obj.js";
import { stlBinary } from "../src/export/formats/stl-binary.js";
import type { Mesh } from "../src/mesh/mesh.js";
import { type Checksum, checksumOf } from "./checksum.js";
import type { Effort } from "./effort.js";
import { type Task, type Timing, timeTask } from "./time-task.js";
import { torus } from "./torus.js";

export interface WritingTiming extends Timing {
  /** Size of the file. */
  readonly bytes: number;
  /** Median over that of three's exporter. */
  readonly ratio: number;
}

export interface Writing {
  readonly checksum: Checksum;
  readonly timings: readonly WritingTiming[];
}

/** 2 · 1000 · 500 triangles. */
const TORUS = { around: 1000, across: 500 };

/** three's OBJ is timed as far as its text: to make bytes of it would only add to its time. */
export async function timeWriting(effort: Effort): Promise<Writing> {
  process.stderr.write("writing\n");
  const mesh = torus(TORUS.around, TORUS.across);
  const object = toObject(mesh);
  const pairs: [Task<Sized>, Task<Sized>][] = [
    [
      { name: "three STLExporter, binary", run: () => new STLExporter().parse(object, { binary: true }) },
      { name: "annulet stl-binary", run: () => stlBinary.encode(mesh, { name: "torus" }) },
    ],
    [
      { name: "three OBJExporter", run: () => new OBJExporter().parse(object) },
      { name: "annulet obj", run: () => obj.encode(mesh, { name: "torus" }) },
    ],
  ];
  const timings: WritingTiming[] = [];
  for (const [theirs, ours] of pairs) {
    const reference = await timeTask(theirs, effort);
    const own = await timeTask(ours, effort);
    for (const { timing, result } of [reference, own]) {
      timings.push({ ...timing, bytes: sizeOf(result), ratio: timing.median / reference.timing.median });
    }
  }
  return { checksum: checksumOf(mesh), timings };
}

type Sized = string | { readonly byteLength: number };

/** OBJ's text is ASCII: a byte a character. */
function sizeOf(file: Sized): number {
  return typeof file === "string" ? file.length : file.byteLength;
}

function toObject({ positions, triangles }: Mesh): three.Mesh {
  const geometry = new three.BufferGeometry();
  geometry.setAttribute("position", new three.BufferAttribute(Float32Array.from(positions), 3));
  geometry.setIndex(new three.BufferAttribute(triangles, 1));
  const object = new three.Mesh(geometry);
  object.updateMatrixWorld();
  return object;
}
