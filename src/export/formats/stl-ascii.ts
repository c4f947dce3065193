/**
 * STL as text: one facet of seven lines a triangle. Numbers are the shortest decimals that read back as the float32
 * that binary STL would hold. STL has no place for a unit: the solid's name says it in words.
 */
import type { Mesh } from "../../mesh/mesh.js";
import { ByteWriter } from "../bytes.js";
import { FLOAT32_BYTES, writeFloat32 } from "../decimal.js";
import type { EncodeOptions, Format } from "../format.js";
import { asciiLine } from "../names.js";
import { roundFacets } from "./facets.js";

export const stlAscii: Format = {
  name: "stl-ascii",
  extensions: [".stl"],
  unit: 'the solid line says "unit: mm"; STL itself has no unit',
  encode,
};

const encoder = new TextEncoder();
const FACET = encoder.encode("facet normal");
const LOOP = encoder.encode("\nouter loop\n");
const VERTEX = encoder.encode("vertex");
const END = encoder.encode("endloop\nendfacet\n");

/** Most bytes of one line of a vertex: the word, three numbers with a space before each, the line's end. */
const VERTEX_LINE_BYTES = VERTEX.length + 3 * (FLOAT32_BYTES + 1) + 1;
const FACET_BYTES = FACET.length + 3 * (FLOAT32_BYTES + 1) + LOOP.length + 3 * VERTEX_LINE_BYTES + END.length;

function encode(mesh: Mesh, { name }: EncodeOptions): Uint8Array {
  const { positions, normals } = roundFacets(mesh);
  const { triangles } = mesh;
  const { lines, starts } = vertexLines(positions);
  const solid = solidName(name);
  const writer = new ByteWriter();
  writer.text(`solid ${solid}\n`);
  for (let t = 0; t < triangles.length; t += 3) {
    writer.into(FACET_BYTES, (chunk, at) => {
      chunk.set(FACET, at);
      let end = writeTriple(chunk, at + FACET.length, normals, t);
      chunk.set(LOOP, end);
      end += LOOP.length;
      for (let i = 0; i < 3; i++) {
        const from = starts[triangles[t + i]];
        const to = starts[triangles[t + i] + 1];
        for (let k = from; k < to; k++) chunk[end++] = lines[k];
      }
      chunk.set(END, end);
      return end + END.length;
    });
  }
  writer.text(`endsolid ${solid}\n`);
  return writer.finish();
}

/** Each vertex's line, made once: a closed mesh uses a vertex six times on average. */
function vertexLines(positions: Float64Array): { lines: Uint8Array; starts: Uint32Array } {
  const starts = new Uint32Array(positions.length / 3 + 1);
  const writer = new ByteWriter();
  for (let i = 0; i < positions.length; i += 3) {
    writer.into(VERTEX_LINE_BYTES, (chunk, at) => {
      chunk.set(VERTEX, at);
      const end = writeTriple(chunk, at + VERTEX.length, positions, i);
      chunk[end] = 10;
      starts[i / 3 + 1] = starts[i / 3] + end + 1 - at;
      return end + 1;
    });
  }
  return { lines: writer.finish(), starts };
}

function writeTriple(chunk: Uint8Array, at: number, values: Float64Array, from: number): number {
  let end = at;
  for (let k = 0; k < 3; k++) {
    chunk[end] = 32;
    end = writeFloat32(chunk, end + 1, values[from + k]);
  }
  return end;
}

/** The name with the unit; what a reader could take for an end or a corner is broken up. */
function solidName(name: string): string {
  const safe = asciiLine(name)
    .replace(/end(?=solid|facet|loop)/gi, "end-")
    .replace(/(normal|vertex) (?=[-+.\d])/gi, "$1: ");
  return `${safe} (annulet, unit: mm)`.trim();
}
