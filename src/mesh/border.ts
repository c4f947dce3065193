/**
 * The border of an open mesh: the edges of one triangle alone, and the loops they make.
 */
import { AnnuletError } from "../base/errors.js";
import { nextEdge } from "./edges.js";
import type { Mesh } from "./mesh.js";

/**
 * The border's loops as directed edges (see `edges.ts`), each after the one that ends where it begins: the surface lies on
 * their left.
 *
 * @param keep which vertices the loops may run through; others' edges are left out
 * @throws AnnuletError `border-tangled` where the border does not part into simple loops
 */
export function borderLoops(mesh: Mesh, keep: (vertex: number) => boolean = () => true): number[][] {
  const { triangles } = mesh;
  const count = mesh.positions.length / 3;
  const kept = new Uint8Array(count);
  for (let vertex = 0; vertex < count; vertex++) kept[vertex] = Number(keep(vertex));
  const edges = new Map<number, number>();
  for (let t = 0; t < triangles.length; t += 3) {
    if (kept[triangles[t]] + kept[triangles[t + 1]] + kept[triangles[t + 2]] < 2) continue;
    for (let h = t; h < t + 3; h++) {
      const [a, b] = [triangles[h], triangles[nextEdge(h)]];
      if (kept[a] + kept[b] < 2) continue;
      if (edges.has(a * count + b)) throw tangled();
      edges.set(a * count + b, h);
    }
  }
  const from = new Map<number, number>();
  for (const [key, h] of edges) {
    const [a, b] = [Math.floor(key / count), key % count];
    if (edges.has(b * count + a)) continue;
    if (from.has(a)) throw tangled();
    from.set(a, h);
  }
  const loops: number[][] = [];
  for (const first of from.values()) {
    if (!from.has(triangles[first])) continue;
    const loop: number[] = [];
    let edge: number | undefined = first;
    while (edge !== undefined) {
      loop.push(edge);
      from.delete(triangles[edge]);
      edge = from.get(triangles[nextEdge(edge)]);
    }
    if (triangles[nextEdge(loop[loop.length - 1])] !== triangles[first]) throw tangled();
    loops.push(loop);
  }
  return loops;
}

function tangled(): AnnuletError {
  return new AnnuletError({
    code: "border-tangled",
    message: "the border of an open mesh does not part into simple loops",
  });
}
