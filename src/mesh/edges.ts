/**
 * The edge table: every directed edge matched to the one that runs the other way.
 *
 * Directed edge h belongs to triangle ⌊h / 3⌋ and runs from its corner h mod 3 to the next corner. Edges are matched vertex
 * by vertex, or, where some edge has not just two users, grouped by two counting sorts: either way time and memory grow
 * with the mesh alone, whatever its shape.
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
  const opposite = isClear(skip) ? matchPairs(mesh) : undefined;
  return opposite === undefined
    ? groupEdges(mesh, skip)
    : { opposite, count: opposite.length / 2, open: [], crowded: [], crowdedLinks: [] };
}

function isClear(skip: Uint8Array | undefined): boolean {
  if (skip !== undefined) for (let t = 0; t < skip.length; t++) if (skip[t] !== 0) return false;
  return true;
}

/** The opposite of each directed edge where every edge has two users, one in each direction; otherwise undefined. */
function matchPairs({ positions, triangles }: Mesh): Int32Array | undefined {
  const vertices = positions.length / 3;
  const leaving = countingSort(triangles, vertices);
  const opposite = new Int32Array(triangles.length);
  /** For each vertex the directed edge that led to it last: it holds for the vertex at hand if it leaves from there. */
  const leadsTo = new Int32Array(vertices).fill(-1);
  for (let from = 0, to = 0; from < leaving.length; from = to) {
    const vertex = triangles[leaving[from]];
    for (; to < leaving.length && triangles[leaving[to]] === vertex; to++) {
      const end = triangles[nextEdge(leaving[to])];
      const same = leadsTo[end];
      if (same !== -1 && triangles[same] === vertex) return undefined;
      leadsTo[end] = leaving[to];
    }
    for (let i = from; i < to; i++) {
      const arriving = previousEdge(leaving[i]);
      const back = leadsTo[triangles[arriving]];
      if (back === -1 || triangles[back] !== vertex) return undefined;
      opposite[arriving] = back;
    }
  }
  return opposite;
}

/** The table of any mesh. */
function groupEdges(mesh: Mesh, skip: Uint8Array | undefined): EdgeTable {
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
  return countingSort(low, vertices, countingSort(high, vertices, used.subarray(0, length)));
}

/** Items, or all that have a key, ordered by their key, below `keys`; those with the same key stay in order. */
export function countingSort(keyOf: Uint32Array, keys: number, items?: Uint32Array): Uint32Array {
  const count = items === undefined ? keyOf.length : items.length;
  const at = new Uint32Array(keys + 1);
  for (let i = 0; i < count; i++) at[keyOf[items === undefined ? i : items[i]] + 1]++;
  for (let key = 0; key < keys; key++) at[key + 1] += at[key];
  const sorted = new Uint32Array(count);
  for (let i = 0; i < count; i++) {
    const item = items === undefined ? i : items[i];
    sorted[at[keyOf[item]]++] = item;
  }
  return sorted;
}
