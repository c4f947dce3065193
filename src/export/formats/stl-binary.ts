/**
 * Binary STL: 80 bytes of header, a count, then 50 bytes a triangle (normal, three corners, two spare bytes),
 * little-endian. The header must not begin with "solid", which marks the text form. STL has no place for a unit: the
 * header says it in words.
 */
import type { Mesh } from "../../mesh/mesh.js";
import type { EncodeOptions, Format } from "../format.js";
import { asciiLine } from "../names.js";
import { roundFacets } from "./facets.js";

const HEADER_BYTES = 80;
const COUNT_BYTES = 4;
const FACET_BYTES = 50;

export const stlBinary: Format = {
  name: "stl-binary",
  extensions: [".stl"],
  unit: 'the header says "unit: mm"; STL itself has no unit',
  encode,
};

function encode(mesh: Mesh, { name }: EncodeOptions): Uint8Array {
  const { positions, normals } = roundFacets(mesh);
  const { triangles } = mesh;
  const count = triangles.length / 3;
  const bytes = new Uint8Array(HEADER_BYTES + COUNT_BYTES + FACET_BYTES * count);
  writeHeader(bytes, name);
  const view = new DataView(bytes.buffer);
  view.setUint32(HEADER_BYTES, count, true);
  let at = HEADER_BYTES + COUNT_BYTES;
  for (let t = 0; t < triangles.length; t += 3) {
    for (let k = 0; k < 3; k++) view.setFloat32(at + 4 * k, normals[t + k] + 0, true);
    for (let i = 0; i < 3; i++) {
      const from = 3 * triangles[t + i];
      for (let k = 0; k < 3; k++) view.setFloat32(at + 12 * (i + 1) + 4 * k, positions[from + k], true);
    }
    at += FACET_BYTES;
  }
  return bytes;
}

/** The rest of the header is spaces. "=" is left out: some readers take "COLOR=" in a header for colours. */
function writeHeader(bytes: Uint8Array, name: string): void {
  const header = `annulet, unit: mm, ${asciiLine(name).replace(/=/g, "-")}`.slice(0, HEADER_BYTES);
  bytes.fill(32, 0, HEADER_BYTES);
  for (let i = 0; i < header.length; i++) bytes[i] = header.charCodeAt(i);
}
