/**
 * What the indices of a mesh alone say of it, wherever its points lie: which triangles can take part, how edges match,
 * how many fans meet at each vertex, what hangs together.
 */
import { buildEdgeTable, type EdgeTable, nextEdge, previousEdge } from "../mesh/edges.js";
import type { Mesh } from "../mesh/mesh.js";
import { edgeShells, type Shells } from "../mesh/shells.js";

export interface Topology {
  /** 1 for each triangle that is left out, as it repeats a vertex or names one that is not there. */
  readonly skip: Uint8Array;
  /** Triangles that are not left out. */
  readonly kept: number;
  /** Triangles that name a vertex that is not there. */
  readonly outOfRange: readonly number[];
  /** Triangles that use a vertex more than once. */
  readonly repeated: readonly number[];
  readonly edges: Pick<EdgeTable, "count" | "open" | "crowded">;
  /** Vertices that some triangle uses. */
  readonly vertices: number;
  /** Vertices with more than one fan of triangles. */
  readonly pinched: readonly number[];
  readonly shells: Shells;
}

export function readTopology(mesh: Mesh): Topology {
  const sorted = sortOutTriangles(mesh);
  const edges = buildEdgeTable(mesh, sorted.skip);
  return { ...sorted, edges, ...countFans(mesh, edges, sorted.skip), shells: edgeShells(edges, sorted.skip) };
}

/** Finds what cannot take part in the edge table. */
function sortOutTriangles({ positions, triangles }: Mesh) {
  const vertices = positions.length / 3;
  const skip = new Uint8Array(triangles.length / 3);
  const outOfRange: number[] = [];
  const repeated: number[] = [];
  for (let t = 0; t < skip.length; t++) {
    const a = triangles[3 * t];
    const b = triangles[3 * t + 1];
    const c = triangles[3 * t + 2];
    if (a >= vertices || b >= vertices || c >= vertices) outOfRange.push(t);
    else if (a === b || b === c || c === a) repeated.push(t);
    else continue;
    skip[t] = 1;
  }
  return { skip, kept: skip.length - outOfRange.length - repeated.length, outOfRange, repeated };
}

/**
 * Counts the used vertices and finds those with more than one fan of triangles. Vertices on an edge that is used twice
 * are passed over: fans cannot be told apart there, and the edge is reported.
 */
function countFans(mesh: Mesh, edges: EdgeTable, skip: Uint8Array): { vertices: number; pinched: number[] } {
  const { triangles } = mesh;
  const { opposite } = edges;
  const corners = new Uint32Array(mesh.positions.length / 3);
  const firstCorner = new Int32Array(corners.length).fill(-1);
  for (let t = skip.length - 1; t >= 0; t--) {
    if (skip[t] !== 0) continue;
    for (let h = 3 * t + 2; h >= 3 * t; h--) {
      corners[triangles[h]]++;
      firstCorner[triangles[h]] = h;
    }
  }
  const passOver = new Uint8Array(corners.length);
  for (const h of edges.crowded) {
    passOver[triangles[h]] = 1;
    passOver[triangles[nextEdge(h)]] = 1;
  }
  const pinched: number[] = [];
  let vertices = 0;
  for (let vertex = 0; vertex < corners.length; vertex++) {
    const first = firstCorner[vertex];
    if (first === -1) continue;
    vertices++;
    if (passOver[vertex] === 1) continue;
    let seen = 1;
    let at = opposite[previousEdge(first)];
    for (; at !== -1 && at !== first; at = opposite[previousEdge(at)]) seen++;
    // An open fan ended on one side: go on from the start to its other side.
    if (at === -1) for (let h = opposite[first]; h !== -1; h = opposite[nextEdge(h)]) seen++;
    if (seen < corners[vertex]) pinched.push(vertex);
  }
  return { vertices, pinched };
}
