/**
 * Binary STL: 80 bytes of header, a count, then 50 bytes a triangle (normal, three corners, two spare bytes),
 * little-endian. The header must not begin with "solid", which marks the text form. STL has no place for a unit: the
 * header says it in words.
 */
import type { Mesh } from "../../../mesh/mesh.js";
import { ChunkBuffer } from "../bytes.js";
import type { EncodeOptions, Format } from "../format.js";
import { asciiLine } from "../names.js";
import { FACET_NUMBERS, fillFacet, requireFloat32 } from "./fill-facet.js";

const HEADER_BYTES = 80;
const FACET_BYTES = 50;

export const stlBinary: Format = {
  name: "stl-binary",
  extensions: [".stl"],
  unit: 'the header says "unit: mm"; STL itself has no unit',
  write,
};

function* write(mesh: Mesh, { name }: EncodeOptions): Iterable<Uint8Array> {
  requireFloat32(mesh);
  const { triangles } = mesh;
  const buffer = new ChunkBuffer();
  writeHeader(buffer, name);
  buffer.view.setUint32(buffer.at, triangles.length / 3, true);
  buffer.at += 4;
  let from = 0;
  while (from < triangles.length) {
    from = fillFacets(buffer, mesh, from);
    yield buffer.take();
  }
  if (triangles.length === 0) yield buffer.take();
}

/** Writes facets while they have room. Returns the place of the first triangle that had none. */
function fillFacets(buffer: ChunkBuffer, mesh: Mesh, from: number): number {
  const { view } = buffer;
  const facet = new Float64Array(FACET_NUMBERS);
  const most = Math.floor((view.byteLength - buffer.at) / FACET_BYTES);
  const to = Math.min(from + 3 * most, mesh.triangles.length);
  let at = buffer.at;
  for (let t = from; t < to; t += 3) {
    fillFacet(mesh, t, facet);
    // Written out: as a loop, the whole file takes an eighth longer (measured).
    view.setFloat32(at, facet[0], true);
    view.setFloat32(at + 4, facet[1], true);
    view.setFloat32(at + 8, facet[2], true);
    view.setFloat32(at + 12, facet[3], true);
    view.setFloat32(at + 16, facet[4], true);
    view.setFloat32(at + 20, facet[5], true);
    view.setFloat32(at + 24, facet[6], true);
    view.setFloat32(at + 28, facet[7], true);
    view.setFloat32(at + 32, facet[8], true);
    view.setFloat32(at + 36, facet[9], true);
    view.setFloat32(at + 40, facet[10], true);
    view.setFloat32(at + 44, facet[11], true);
    view.setUint16(at + 4 * FACET_NUMBERS, 0);
    at += FACET_BYTES;
  }
  buffer.at = at;
  return to;
}

/** The rest of the header is spaces. "=" is left out: some readers take "COLOR=" in a header for colours. */
function writeHeader(buffer: ChunkBuffer, name: string): void {
  const header = `annulet, unit: mm, ${asciiLine(name).replace(/=/g, "-")}`.slice(0, HEADER_BYTES);
  buffer.bytes.fill(32, 0, HEADER_BYTES);
  for (let i = 0; i < header.length; i++) buffer.bytes[i] = header.charCodeAt(i);
  buffer.at = HEADER_BYTES;
}
