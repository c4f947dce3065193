/**
 * The edge table: every directed edge matched to the one that runs the other way.
 *
 * Directed edge h belongs to triangle ⌊h / 3⌋ and runs from its corner h mod 3 to the next corner. Edges are grouped by
 * two counting sorts, so time and memory grow with the mesh alone, whatever its shape.
 */
import type { Mesh } from "./mesh.js";

export interface EdgeTable {
  /** For each directed edge the one running the other way, or −1 where it has none or more than one. */
  readonly opposite: Int32Array;
  /** Number of edges, direction left aside. */
  readonly count: number;
  /** One directed edge for each edge that a single triangle uses. */
  readonly open: readonly number[];
  /** One directed edge for each edge that is used more than once in the same direction. */
  readonly crowded: readonly number[];
  /** Pairs of directed edges, flat, that chain together the users of each crowded edge. */
  readonly crowdedLinks: readonly number[];
}

/** The next directed edge of the same triangle. */
export function nextEdge(h: number): number {
  return h % 3 === 2 ? h - 2 : h + 1;
}

/** The previous directed edge of the same triangle. */
export function previousEdge(h: number): number {
  return h % 3 === 0 ? h + 2 : h - 1;
}

/**
 * Matches the directed edges of a mesh.
 *
 * @param skip one entry a triangle; what is not 0 is left out. Triangles that repeat a vertex or name one that is not
 *   there must be left out.
 */
export function buildEdgeTable(mesh: Mesh, skip?: Uint8Array): EdgeTable {
  const order = sortEdges(mesh, skip);
  const { triangles } = mesh;
  const opposite = new Int32Array(triangles.length).fill(-1);
  const open: number[] = [];
  const crowded: number[] = [];
  const crowdedLinks: number[] = [];
  let count = 0;
  for (let from = 0; from < order.length; ) {
    const first = order[from];
    const start = triangles[first];
    const end = triangles[nextEdge(first)];
    let to = from;
    let along = 0;
    for (; to < order.length; to++) {
      const h = order[to];
      const isAlong = triangles[h] === start && triangles[nextEdge(h)] === end;
      if (!isAlong && !(triangles[h] === end && triangles[nextEdge(h)] === start)) break;
      if (isAlong) along++;
    }
    const users = to - from;
    if (users === 1) open.push(first);
    else if (users === 2 && along === 1) {
      opposite[first] = order[from + 1];
      opposite[order[from + 1]] = first;
    } else {
      crowded.push(first);
      for (let i = from + 1; i < to; i++) crowdedLinks.push(order[i - 1], order[i]);
    }
    count++;
    from = to;
  }
  return { opposite, count, open, crowded, crowdedLinks };
}

/** Directed edges ordered by their lower vertex, then their higher one, then their number. */
function sortEdges(mesh: Mesh, skip: Uint8Array | undefined): Uint32Array {
  const { triangles } = mesh;
  const vertices = mesh.positions.length / 3;
  const high = new Uint32Array(triangles.length);
  const low = new Uint32Array(triangles.length);
  const used = new Uint32Array(triangles.length);
  let length = 0;
  for (let h = 0; h < triangles.length; h++) {
    if (skip !== undefined && skip[Math.floor(h / 3)] !== 0) continue;
    const a = triangles[h];
    const b = triangles[nextEdge(h)];
    low[h] = Math.min(a, b);
    high[h] = Math.max(a, b);
    used[length++] = h;
  }
  return countingSort(countingSort(used.subarray(0, length), high, vertices), low, vertices);
}

function countingSort(items: Uint32Array, keyOf: Uint32Array, keys: number): Uint32Array {
  const at = new Uint32Array(keys + 1);
  for (let i = 0; i < items.length; i++) at[keyOf[items[i]] + 1]++;
  for (let key = 0; key < keys; key++) at[key + 1] += at[key];
  const sorted = new Uint32Array(items.length);
  for (let i = 0; i < items.length; i++) sorted[at[keyOf[items[i]]]++] = items[i];
  return sorted;
}
