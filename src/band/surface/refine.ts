/**
 * Conforming refinement: splits a flat mesh where it crosses given lines of u or v, so that after bending it has facets
 * where the band has them. An edge is split once, whichever triangle comes first, so no T-junction appears.
 */
import { AT_A_BREATH, BREATH, finish, type Pausing } from "../../base/pausing.js";
import { GrowingPoints, GrowingTriangles } from "../../mesh/growing.js";
import type { Mesh } from "../../mesh/mesh.js";

/** Axis of a vertex by which lines are given: 0 is u, 1 is v. */
export type FlatAxis = 0 | 1;

/** A vertex this near to a line is on it, mm: splitting nearer only makes slivers. */
export const ON_LINE = 1e-4;

/**
 * Splits the triangles at the lines where the axis' coordinate takes the given values.
 *
 * @param lines ascending, mm
 */
export function splitAtLines(mesh: Mesh, axis: FlatAxis, lines: readonly number[]): Mesh {
  return finish(splittingAtLines(mesh, axis, lines));
}

/** The same in pieces. */
export function* splittingAtLines(mesh: Mesh, axis: FlatAxis, lines: readonly number[]): Pausing<Mesh> {
  const positions = new GrowingPoints(mesh.positions);
  const places: number[] = [];
  for (let i = axis; i < mesh.positions.length; i += 3) places.push(placeAmong(lines, mesh.positions[i]));
  const splits = new Map<number, number>();

  /** The vertex where edge a–b meets a line; the same for both triangles of the edge. */
  const splitEdge = (a: number, b: number, line: number): number => {
    const [p, q] = a < b ? [a, b] : [b, a];
    const key = (p * EDGE_RADIX + q) * lines.length + line;
    const known = splits.get(key);
    if (known !== undefined) return known;
    const t = (lines[line] - positions.at(3 * p + axis)) / (positions.at(3 * q + axis) - positions.at(3 * p + axis));
    const vertex = positions.count;
    const at = (k: number) =>
      k === axis ? lines[line] : positions.at(3 * p + k) + t * (positions.at(3 * q + k) - positions.at(3 * p + k));
    positions.push(at(0), at(1), at(2));
    places.push(2 * line + 1);
    splits.set(key, vertex);
    return vertex;
  };

  const done = new GrowingTriangles();
  let triangles: ArrayLike<number> = mesh.triangles;
  while (triangles.length > 0) {
    const again: number[] = [];
    for (let i = 0; i < triangles.length; i += 3) {
      if (i % (3 * AT_A_BREATH) === 0) yield BREATH;
      const a = triangles[i];
      const b = triangles[i + 1];
      const c = triangles[i + 2];
      const line = splittingLine(places[a], places[b], places[c]);
      if (line === -1) done.push(a, b, c);
      else for (const vertex of splitTriangle([a, b, c], line, places, splitEdge)) again.push(vertex);
    }
    triangles = again;
  }
  return { positions: positions.take(), triangles: done.take() };
}

/** Vertex numbers stay below this, so that an edge packs into one exact double together with its line. */
const EDGE_RADIX = 2 ** 22;

/** Where a coordinate lies: 2 i + 1 on line i, 2 i between line i − 1 and line i. */
function placeAmong(lines: readonly number[], value: number): number {
  let [low, high] = [0, lines.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (lines[middle] < value - ON_LINE) low = middle + 1;
    else high = middle;
  }
  return low < lines.length && Math.abs(lines[low] - value) <= ON_LINE ? 2 * low + 1 : 2 * low;
}

/**
 * The line to split at among those strictly between the corners' places; −1 where there is none. It is the one whose
 * number from 1 has the most factors of two: of any run of lines that is one and the same, so that both triangles of an
 * edge split it in the same order, at the same points.
 */
function splittingLine(a: number, b: number, c: number): number {
  const first = (Math.min(a, b, c) + 1) >> 1;
  const last = (Math.max(a, b, c) >> 1) - 1;
  if (first > last) return -1;
  let number = last + 1;
  while ((number & (number - 1)) > first) number &= number - 1;
  return number - 1;
}

function splitTriangle(
  corner: readonly number[],
  line: number,
  places: readonly number[],
  splitEdge: (a: number, b: number, line: number) => number,
): number[] {
  const on = 2 * line + 1;
  const side = (vertex: number) => Math.sign(places[vertex] - on);
  const lone = corner.findIndex((vertex, i) => {
    const [s, t] = [side(corner[(i + 1) % 3]), side(corner[(i + 2) % 3])];
    return side(vertex) === 0 ? s * t < 0 : side(vertex) !== s && side(vertex) !== t && s * t > 0;
  });
  if (lone !== -1) {
    const [a, b, c] = [corner[lone], corner[(lone + 1) % 3], corner[(lone + 2) % 3]];
    if (side(a) === 0) {
      const m = splitEdge(b, c, line);
      return [a, b, m, a, m, c];
    }
    const [p, q] = [splitEdge(a, b, line), splitEdge(a, c, line)];
    return [a, p, q, p, b, c, p, c, q];
  }
  return [...corner];
}
