/**
 * STL as text: one facet of seven lines a triangle. Numbers are the shortest decimals that read back as the float32
 * that binary STL would hold. STL has no place for a unit: the solid's name says it in words.
 */
import type { Mesh } from "../../../mesh/mesh.js";
import { ChunkBuffer, utf8 } from "../bytes.js";
import type { EncodeOptions, Format } from "../format.js";
import { asciiLine } from "../names.js";
import { FACET_NUMBERS, fillFacet, requireFloat32 } from "./fill-facet.js";
import { TRIPLE_BYTES, VERTEX_LINE_BYTES, VertexLines, writeTriple } from "./vertex-lines.js";

export const stlAscii: Format = {
  name: "stl-ascii",
  extensions: [".stl"],
  unit: 'the solid line says "unit: mm"; STL itself has no unit',
  write,
};

const FACET = utf8("facet normal");
const LOOP = utf8("\nouter loop\n");
const END = utf8("endloop\nendfacet\n");

const FACET_BYTES = FACET.length + TRIPLE_BYTES + LOOP.length + 3 * VERTEX_LINE_BYTES + END.length;

function* write(mesh: Mesh, { name }: EncodeOptions): Iterable<Uint8Array> {
  requireFloat32(mesh);
  const { positions, triangles } = mesh;
  const solid = solidName(name);
  yield utf8(`solid ${solid}\n`);
  const lines = new VertexLines(positions);
  const facet = new Float64Array(FACET_NUMBERS);
  const buffer = new ChunkBuffer();
  for (let t = 0; t < triangles.length; t += 3) {
    if (!buffer.hasRoomFor(FACET_BYTES)) yield buffer.take();
    fillFacet(mesh, t, facet);
    buffer.add(FACET);
    buffer.at = writeTriple(buffer.bytes, buffer.at, facet, 0);
    buffer.add(LOOP);
    for (let i = 0; i < 3; i++) buffer.at = lines.write(buffer.bytes, buffer.at, triangles[t + i]);
    buffer.add(END);
  }
  yield buffer.take();
  yield utf8(`endsolid ${solid}\n`);
}

/** The name with the unit; what a reader could take for an end or a corner is broken up. */
function solidName(name: string): string {
  const safe = asciiLine(name)
    .replace(/end(?=solid|facet|loop)/gi, "end-")
    .replace(/(normal|vertex) (?=[-+.\d])/gi, "$1: ");
  return `${safe} (annulet, unit: mm)`.trim();
}
