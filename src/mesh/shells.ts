/**
 * The connected pieces of a mesh, by union-find (R. E. Tarjan, J. ACM 22, 1975).
 */
import type { EdgeTable } from "./edges.js";
import type { Mesh } from "./mesh.js";

export interface Shells {
  /** For each triangle the number of its shell, from 0 in order of first appearance; −1 where it was left out. */
  readonly of: Int32Array;
  readonly count: number;
}

/** Shells whose triangles hang together by edges. A vertex alone joins nothing; an edge with many users joins them all. */
export function edgeShells(table: EdgeTable, skip?: Uint8Array): Shells {
  const { opposite, crowdedLinks } = table;
  const parent = singletons(opposite.length / 3);
  for (let triangle = 0; triangle < parent.length; triangle++) {
    for (let h = 3 * triangle; h < 3 * triangle + 3; h++) {
      if (opposite[h] > h) unite(parent, triangle, Math.floor(opposite[h] / 3));
    }
  }
  for (let i = 0; i < crowdedLinks.length; i += 2) {
    unite(parent, Math.floor(crowdedLinks[i] / 3), Math.floor(crowdedLinks[i + 1] / 3));
  }
  return numberShells(parent.length, (triangle) => findRoot(parent, triangle), parent.length, skip);
}

/** Pieces whose triangles hang together by vertices. Indices must be in range. */
export function vertexShells(mesh: Mesh): Shells {
  const { triangles } = mesh;
  const vertices = mesh.positions.length / 3;
  const parent = singletons(vertices);
  for (let t = 0; t < triangles.length; t += 3) {
    unite(parent, triangles[t], triangles[t + 1]);
    unite(parent, triangles[t], triangles[t + 2]);
  }
  return numberShells(triangles.length / 3, (triangle) => findRoot(parent, triangles[3 * triangle]), vertices);
}

/** `count` sets of one member each. */
export function singletons(count: number): Int32Array {
  const parent = new Int32Array(count);
  for (let i = 0; i < count; i++) parent[i] = i;
  return parent;
}

/** The member that stands for `item`'s set; shortens the way to it. */
export function findRoot(parent: Int32Array, item: number): number {
  let at = item;
  while (parent[at] !== at) {
    parent[at] = parent[parent[at]];
    at = parent[at];
  }
  return at;
}

/** Makes one set of two; the lower number stands for it. */
export function unite(parent: Int32Array, a: number, b: number): void {
  const rootA = findRoot(parent, a);
  const rootB = findRoot(parent, b);
  if (rootA < rootB) parent[rootB] = rootA;
  else parent[rootA] = rootB;
}

function numberShells(count: number, rootOf: (triangle: number) => number, roots: number, skip?: Uint8Array): Shells {
  const of = new Int32Array(count).fill(-1);
  const numberOf = new Int32Array(roots).fill(-1);
  let shells = 0;
  for (let triangle = 0; triangle < count; triangle++) {
    if (skip !== undefined && skip[triangle] !== 0) continue;
    const root = rootOf(triangle);
    if (numberOf[root] === -1) numberOf[root] = shells++;
    of[triangle] = numberOf[root];
  }
  return { of, count: shells };
}
