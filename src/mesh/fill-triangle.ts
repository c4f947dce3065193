/**
 * A triangle with further points on its sides, as triangles between all of them.
 */

/** Triangles of abc with points on its sides ab, bc and ca, each in order: those of a side are joined to the corner opposite. */
export function fillTriangle([a, b, c]: readonly number[], [ab, bc, ca]: readonly (readonly number[])[]): number[] {
  if (ab.length === 0) return bc.length + ca.length === 0 ? [a, b, c] : fillTriangle([b, c, a], [bc, ca, ab]);
  const line = [a, ...ab, b];
  const last = line.length - 2;
  return line
    .slice(1)
    .flatMap((to, i) => fillTriangle([line[i], to, c], [[], i === last ? bc : [], i === 0 ? ca : []]));
}
