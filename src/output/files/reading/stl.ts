/**
 * Reads STL, binary or text. Each triangle has corners of its own; normals are passed over, as corners say more.
 */
import { utf8 } from "../bytes.js";
import { FloatList } from "./lists.js";
import { type Broken, type FileMesh, type MeshReader, requireFewTriangles } from "./reader.js";
import { Scanner } from "./scanner.js";

export const stlReader: MeshReader = { extensions: [".stl"], read };

const HEADER_BYTES = 84;
const FACET_BYTES = 50;
/** Bytes of a facet's normal, which stands before its corners. */
const NORMAL_BYTES = 12;

function read(bytes: Uint8Array, broken: Broken): FileMesh {
  if (bytes.length < HEADER_BYTES) throw broken(`${bytes.length} bytes are too few for an STL file`);
  const count = new DataView(bytes.buffer, bytes.byteOffset).getUint32(HEADER_BYTES - 4, true);
  if (bytes.length === HEADER_BYTES + FACET_BYTES * count) {
    requireFewTriangles(count, broken);
    return { positions: binaryCorners(bytes, count) };
  }
  const startsAsText = /^\s*solid/i.test(new TextDecoder().decode(bytes.subarray(0, HEADER_BYTES)));
  if (!startsAsText) {
    const room = (bytes.length - HEADER_BYTES) / FACET_BYTES;
    throw broken(
      `as binary STL it announces ${count} triangles but has room for ${Number(room.toFixed(2))}, and it is no text STL`,
    );
  }
  return { positions: textCorners(bytes, broken) };
}

function binaryCorners(bytes: Uint8Array, count: number): Float32Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  const corners = new Float32Array(9 * count);
  let at = 0;
  for (let facet = 0; facet < count; facet++) {
    const from = HEADER_BYTES + FACET_BYTES * facet + NORMAL_BYTES;
    for (let k = 0; k < 36; k += 4) corners[at++] = view.getFloat32(from + k, true);
  }
  return corners;
}

const VERTEX = utf8("vertex");
const END_FACET = utf8("endfacet");
const END_SOLID = utf8("endsolid");
const SOLID = utf8("solid");

/** Words that are none of these are passed over, and names end with their line. */
function textCorners(bytes: Uint8Array, broken: Broken): Float64Array {
  const scanner = new Scanner(bytes);
  const corners = new FloatList();
  let facets = 0;
  let ended = false;
  scanner.nextLine();
  while (scanner.nextWord()) {
    if (scanner.isWord(VERTEX)) {
      readCorner(scanner, corners, facets, broken);
      ended = false;
    } else if (scanner.isWord(END_FACET)) {
      const found = corners.length / 3 - 3 * facets;
      facets++;
      if (found !== 3) throw broken(`facet ${facets} has ${found} corners instead of 3`);
      requireFewTriangles(facets, broken);
    } else if (scanner.isWord(END_SOLID) || scanner.isWord(SOLID)) {
      ended = scanner.isWord(END_SOLID);
      scanner.nextLine();
    }
  }
  if (facets === 0) throw broken("it begins like a text STL but has no facets");
  if (corners.length !== 9 * facets || !ended) throw broken(`it breaks off after facet ${facets}`);
  return corners.values;
}

function readCorner(scanner: Scanner, corners: FloatList, facets: number, broken: Broken): void {
  const corner = [0, 0, 0].map(() => {
    const value = scanner.nextWord() ? scanner.number() : Number.NaN;
    if (Number.isFinite(value)) return value;
    if (scanner.done) throw broken(`it breaks off after facet ${facets}`);
    throw broken(`line ${scanner.line()}: facet ${facets + 1} has a corner that is no point: ${scanner.word()}`);
  });
  corners.push(corner[0], corner[1], corner[2]);
}
