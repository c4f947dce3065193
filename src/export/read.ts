/**
 * Reads a mesh back from STL (binary or text) or OBJ with the loaders of three, after checking what those pass over.
 */
import type { BufferAttribute, InterleavedBufferAttribute, Mesh as ThreeMesh } from "three";
import { OBJLoader } from "three/examples/jsm/loaders/OBJLoader.js";
import { STLLoader } from "three/examples/jsm/loaders/STLLoader.js";
import { AnnuletError } from "../errors.js";
import { mergeEqualPoints } from "../mesh/merge.js";
import type { Mesh } from "../mesh/mesh.js";

const HEADER_BYTES = 84;
const FACET_BYTES = 50;

/**
 * Reads a file's bytes. Equal points become one vertex; triangles that repeat a vertex stay, for the gate to see.
 * Coordinates are float32, also from OBJ, as that is what the loaders hold. Files have no unit that could be trusted:
 * lengths are taken as mm. Polygons of more than three corners are cut into fans.
 *
 * @param fileName its ending tells the kind: .stl or .obj
 * @throws AnnuletError `format-unknown` for another ending, `mesh-file-broken` with what is wrong
 */
export function readMesh(bytes: Uint8Array, fileName: string): Mesh {
  const lower = fileName.toLowerCase();
  const read = lower.endsWith(".stl") ? readStl : lower.endsWith(".obj") ? readObj : undefined;
  if (read === undefined) {
    throw new AnnuletError({
      code: "format-unknown",
      message: "no mesh is read from files of this ending",
      value: fileName,
      allowed: ".stl, .obj",
    });
  }
  const broken: Broken = (what) => new AnnuletError({ code: "mesh-file-broken", message: `${fileName}: ${what}` });
  if (bytes.length === 0) throw broken("the file is empty");
  const corners = read(bytes, broken);
  if (corners.length === 0) throw broken("there are no triangles in it");
  const wrong = corners.findIndex((value) => !Number.isFinite(value));
  if (wrong !== -1) {
    throw broken(`triangle ${Math.floor(wrong / 9) + 1} has a corner that is no point, or that is not there`);
  }
  const { positions, indexOf } = mergeEqualPoints(corners);
  return { positions, triangles: indexOf };
}

type Broken = (what: string) => AnnuletError;

/** Corners of all triangles, nine numbers each. */
function readStl(bytes: Uint8Array, broken: Broken): Float64Array {
  if (bytes.length < HEADER_BYTES) throw broken(`${bytes.length} bytes are too few for an STL file`);
  const count = new DataView(bytes.buffer, bytes.byteOffset).getUint32(HEADER_BYTES - 4, true);
  const isBinary = bytes.length === HEADER_BYTES + FACET_BYTES * count;
  const startsAsText = /^\s*solid/.test(new TextDecoder().decode(bytes.subarray(0, HEADER_BYTES)));
  if (!isBinary && !startsAsText) {
    const room = (bytes.length - HEADER_BYTES) / FACET_BYTES;
    throw broken(
      `as binary STL it announces ${count} triangles but has room for ${Number(room.toFixed(2))}, and it is no text STL`,
    );
  }
  if (!isBinary) checkTextFacets(decode(bytes, broken), broken);
  const { position } = new STLLoader().parse(new Uint8Array(bytes).buffer).attributes;
  return readCorners([position]);
}

/** The loader passes over facets with too few or too many corners, and over what is not a number. */
function checkTextFacets(text: string, broken: Broken): void {
  const body = text.indexOf("\n") + 1;
  const word = /\bvertex\s+(\S+)\s+(\S+)\s+(\S+)|\bendfacet\b|\bendsolid\b/g;
  word.lastIndex = body;
  let facets = 0;
  let corners = 0;
  let ended = false;
  for (let match = word.exec(text); match !== null; match = word.exec(text)) {
    if (match[1] !== undefined) {
      corners++;
      ended = false;
      if (match.slice(1, 4).some((number) => !NUMBER.test(number))) {
        throw broken(`facet ${facets + 1} has a corner that is no point: ${match[0].replace(/\s+/g, " ")}`);
      }
    } else if (match[0] === "endfacet") {
      facets++;
      if (corners !== 3) throw broken(`facet ${facets} has ${corners} corners instead of 3`);
      corners = 0;
    } else ended = true;
  }
  if (facets === 0) throw broken("it begins like a text STL but has no facets");
  if (corners !== 0 || !ended) throw broken(`it breaks off after facet ${facets}`);
}

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

function readObj(bytes: Uint8Array, broken: Broken): Float64Array {
  const text = decode(bytes, broken);
  if (text.includes("\0") || !/^\s*v\s/m.test(text) || !/^\s*f\s/m.test(text)) {
    throw broken("it is no OBJ file with vertices and faces");
  }
  const positions: (BufferAttribute | InterleavedBufferAttribute)[] = [];
  for (const child of new OBJLoader().parse(text).children) {
    if ("isMesh" in child) positions.push((child as ThreeMesh).geometry.attributes.position);
  }
  return readCorners(positions);
}

function decode(bytes: Uint8Array, broken: Broken): string {
  try {
    return new TextDecoder().decode(bytes);
  } catch (cause) {
    throw new AnnuletError(broken("its text is too long to be read").problems, { cause });
  }
}

function readCorners(attributes: readonly (BufferAttribute | InterleavedBufferAttribute)[]): Float64Array {
  const all = new Float64Array(attributes.reduce((sum, attribute) => sum + 3 * attribute.count, 0));
  let at = 0;
  for (const attribute of attributes) {
    all.set(attribute.array, at);
    at += 3 * attribute.count;
  }
  return all;
}
