/**
 * Times annulet's writers against three's exporters on the same million triangles. Annulet's chunks are taken one by one
 * and dropped, as a disk would take them; three's exporters give the whole file at once, and no disk is timed for either.
 */
import * as three from "three";
import { OBJExporter } from "three/addons/exporters/OBJExporter.js";
import { STLExporter } from "three/addons/exporters/STLExporter.js";
import type { Mesh } from "../src/mesh/mesh.js";
import type { Format } from "../src/output/files/format.js";
import { glb } from "../src/output/files/formats/glb.js";
import { obj } from "../src/output/files/formats/obj.js";
import { stlAscii } from "../src/output/files/formats/stl-ascii.js";
import { stlBinary } from "../src/output/files/formats/stl-binary.js";
import { threemf } from "../src/output/files/formats/threemf.js";
import { type Checksum, checksumOf } from "./checksum.js";
import { drain } from "./drain.js";
import type { Effort } from "./effort.js";
import { type Task, type Timing, timeTask } from "./time-task.js";
import { TORUS, torus } from "./torus.js";

export interface WritingTiming extends Timing {
  /** Size of the file. */
  readonly bytes: number;
  /** Median over that of three's exporter; undefined where three has none. */
  readonly ratio: number | undefined;
}

export interface Writing {
  readonly checksum: Checksum;
  readonly timings: readonly WritingTiming[];
}

/** three's texts are timed as far as their string: to make bytes of it would only add to its time. */
export async function timeWriting(effort: Effort): Promise<Writing> {
  process.stderr.write("writing\n");
  const mesh = torus(TORUS.around, TORUS.across);
  const object = toObject(mesh);
  const ours = (format: Format): Task<number> => ({
    name: `annulet ${format.name}`,
    run: () => drain(format.write(mesh, { name: "torus" })),
  });
  const stl = (binary: boolean) => sizeOf(new STLExporter().parse(object, { binary }));
  const groups: readonly (readonly Task<number>[])[] = [
    [{ name: "three STLExporter, binary", run: () => stl(true) }, ours(stlBinary)],
    [{ name: "three STLExporter, text", run: () => stl(false) }, ours(stlAscii)],
    [{ name: "three OBJExporter", run: () => new OBJExporter().parse(object).length }, ours(obj)],
  ];
  const timings: WritingTiming[] = [];
  for (const [theirs, own] of groups) {
    const reference = await timeTask(theirs, effort);
    for (const { timing, result } of [reference, await timeTask(own, effort)]) {
      timings.push({ ...timing, bytes: result, ratio: timing.median / reference.timing.median });
    }
  }
  for (const format of [threemf, glb]) {
    const { timing, result } = await timeTask(ours(format), effort);
    timings.push({ ...timing, bytes: result, ratio: undefined });
  }
  return { checksum: checksumOf(mesh), timings };
}

/** A text of ASCII: a byte a character. */
function sizeOf(file: string | DataView): number {
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
