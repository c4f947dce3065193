/**
 * The border of an open mesh: the edges of one triangle alone, and the loops they make.
 */
import { AnnuletError } from "../errors.js";
import { buildEdgeTable, nextEdge } from "./edges.js";
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
  const { opposite, crowded } = buildEdgeTable(mesh);
  if (crowded.length > 0) throw tangled();
  const from = new Map<number, number>();
  for (let h = 0; h < triangles.length; h++) {
    if (opposite[h] !== -1 || !keep(triangles[h]) || !keep(triangles[nextEdge(h)])) continue;
    if (from.has(triangles[h])) throw tangled();
    from.set(triangles[h], h);
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
