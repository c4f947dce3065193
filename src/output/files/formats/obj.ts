/**
 * OBJ: vertices, then triangles by vertex number from 1, counter-clockwise from outside. Numbers are the shortest
 * decimals that read back as the same double. OBJ has no place for a unit: a comment says it in words.
 */
import type { Mesh } from "../../../mesh/mesh.js";
import { requireSound } from "../../../mesh/sound.js";
import { ChunkBuffer, utf8 } from "../bytes.js";
import type { EncodeOptions, Format } from "../format.js";
import { oneLine } from "../names.js";
import { INTEGER_BYTES, writeAscii, writeInteger } from "../write-numbers.js";

export const obj: Format = {
  name: "obj",
  extensions: [".obj"],
  unit: 'a comment says "unit: mm"; OBJ itself has no unit',
  write,
};

/** The longest text of a double: a sign, 17 digits, a point, and e-308 or up to six zeros behind the point. */
const DOUBLE_BYTES = 25;

/** "v" or "f", three numbers with a space before each, the line's end. */
const VERTEX_BYTES = 1 + 3 * (DOUBLE_BYTES + 1) + 1;
const FACE_BYTES = 1 + 3 * (INTEGER_BYTES + 1) + 1;

function* write(mesh: Mesh, { name }: EncodeOptions): Iterable<Uint8Array> {
  requireSound(mesh);
  const { positions, triangles } = mesh;
  const title = oneLine(name);
  yield utf8(`# annulet, unit: mm\n${title === "" ? "" : `o ${title}\n`}`);
  const buffer = new ChunkBuffer();
  for (let i = 0; i < positions.length; i += 3) {
    if (!buffer.hasRoomFor(VERTEX_BYTES)) yield buffer.take();
    const line = `v ${positions[i] + 0} ${positions[i + 1] + 0} ${positions[i + 2] + 0}\n`;
    buffer.at = writeAscii(buffer.bytes, buffer.at, line);
  }
  for (let t = 0; t < triangles.length; t += 3) {
    if (!buffer.hasRoomFor(FACE_BYTES)) yield buffer.take();
    buffer.at = writeFace(buffer.bytes, buffer.at, triangles, t);
  }
  yield buffer.take();
}

function writeFace(bytes: Uint8Array, at: number, triangles: Uint32Array, t: number): number {
  bytes[at] = 102;
  let end = at + 1;
  for (let i = 0; i < 3; i++) {
    bytes[end] = 32;
    end = writeInteger(bytes, end + 1, triangles[t + i] + 1);
  }
  bytes[end] = 10;
  return end + 1;
}
