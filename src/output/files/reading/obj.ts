/**
 * Reads the vertices and faces of OBJ. Polygons of more than three corners are cut into fans; all else is passed over.
 */
import type { Mesh } from "../../../mesh/mesh.js";
import { FloatList, IndexList } from "./lists.js";
import { type Broken, type MeshReader, requireFewTriangles } from "./reader.js";
import { Scanner } from "./scanner.js";

export const objReader: MeshReader = { extensions: [".obj"], read };

const V = 118;
const F = 102;
const SLASH = 47;
const MINUS = 45;
const ZERO = 48;

function read(bytes: Uint8Array, broken: Broken): Mesh {
  const scanner = new Scanner(bytes);
  const positions = new FloatList();
  const triangles = new IndexList();
  while (!scanner.done) {
    if (scanner.nextWordOfLine() && scanner.end - scanner.start === 1) {
      const letter = bytes[scanner.start];
      if (letter === V) readVertex(scanner, positions, broken);
      else if (letter === F) readFace(scanner, positions.length / 3, triangles, broken);
    }
    scanner.nextLine();
  }
  // A zero byte is in no text.
  if (positions.length === 0 || triangles.length === 0 || bytes.includes(0)) {
    throw broken("it is no OBJ file with vertices and faces");
  }
  const wrong = triangles.values.findIndex((vertex) => vertex >= positions.length / 3);
  if (wrong !== -1) {
    throw broken(`triangle ${Math.floor(wrong / 3) + 1} has vertex ${triangles.values[wrong] + 1}, which is not there`);
  }
  return { positions: positions.values, triangles: triangles.values };
}

function readVertex(scanner: Scanner, positions: FloatList, broken: Broken): void {
  const number = () => {
    const value = scanner.nextWordOfLine() ? scanner.number() : Number.NaN;
    if (!Number.isFinite(value)) throw broken(`line ${scanner.line()}: this vertex is no point`);
    return value;
  };
  positions.push(number(), number(), number());
}

function readFace(scanner: Scanner, vertices: number, triangles: IndexList, broken: Broken): void {
  let first = -1;
  let last = -1;
  let corners = 0;
  while (scanner.nextWordOfLine()) {
    const corner = readCorner(scanner, vertices, broken);
    corners++;
    if (corners === 1) first = corner;
    else if (corners > 2) triangles.push(first, last, corner);
    last = corner;
  }
  if (corners < 3) throw broken(`line ${scanner.line()}: this face has ${corners} corners`);
  requireFewTriangles(triangles.length / 3, broken);
}

/** The vertex of `7`, `7/1`, `7//3` or `7/1/3`, from 0; below 0 it is counted back from the last vertex so far. */
function readCorner(scanner: Scanner, vertices: number, broken: Broken): number {
  const { bytes, start, end } = scanner;
  let at = start;
  const back = bytes[at] === MINUS;
  if (back) at++;
  let number = 0;
  const from = at;
  for (; at < end && bytes[at] !== SLASH; at++) {
    const digit = bytes[at] - ZERO;
    if (digit < 0 || digit > 9) break;
    number = 10 * number + digit;
  }
  const vertex = back ? vertices - number : number - 1;
  if (at === from || (at < end && bytes[at] !== SLASH) || vertex < 0 || number > 0xffffffff) {
    throw broken(`line ${scanner.line()}: this face has the vertex ${scanner.word()}, which is not there`);
  }
  return vertex;
}
