/**
 * OBJ: vertices, then triangles by vertex number from 1, counter-clockwise from outside. Numbers are the shortest
 * decimals that read back as the same double. OBJ has no place for a unit: a comment says it in words.
 */
import type { Mesh } from "../../mesh/mesh.js";
import { requireSound } from "../../mesh/sound.js";
import { ByteWriter } from "../bytes.js";
import { INTEGER_BYTES, writeInteger } from "../decimal.js";
import type { EncodeOptions, Format } from "../format.js";
import { oneLine } from "../names.js";

export const obj: Format = {
  name: "obj",
  extensions: [".obj"],
  unit: 'a comment says "unit: mm"; OBJ itself has no unit',
  encode,
};

/** "f", three numbers with a space before each, the line's end. */
const FACE_BYTES = 1 + 3 * (INTEGER_BYTES + 1) + 1;

function encode(mesh: Mesh, { name }: EncodeOptions): Uint8Array {
  requireSound(mesh);
  const { positions, triangles } = mesh;
  const writer = new ByteWriter();
  const title = oneLine(name);
  writer.text("# annulet, unit: mm\n");
  if (title !== "") writer.text(`o ${title}\n`);
  for (let i = 0; i < positions.length; i += 3) {
    writer.text(`v ${positions[i] + 0} ${positions[i + 1] + 0} ${positions[i + 2] + 0}\n`);
  }
  for (let t = 0; t < triangles.length; t += 3) {
    writer.into(FACE_BYTES, (chunk, at) => {
      chunk[at] = 102;
      let end = at + 1;
      for (let i = 0; i < 3; i++) {
        chunk[end] = 32;
        end = writeInteger(chunk, end + 1, triangles[t + i] + 1);
      }
      chunk[end] = 10;
      return end + 1;
    });
  }
  return writer.finish();
}
