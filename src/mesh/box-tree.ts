/**
 * A tree of boxes over triangles of a mesh, to find those whose boxes meet.
 *
 * The triangles are put in the order of a curve that fills space (G. M. Morton, A computer oriented geodetic data base,
 * 1966; from memory), so that neighbours in the order are neighbours in space; the tree is halves of that order.
 */
import type { Mesh } from "./mesh.js";

/** Triangles in a leaf: trees of 4 to 16 took the same time (measured on the lattice). */
const LEAF = 4;

/** Bits of each coordinate in the order. */
const BITS = 10;

/** Numbers of a box: the lowest x, y, z, then the highest. */
const BOX = 6;

/** Nodes that wait while the tree is walked: two for each of its at most 27 levels. */
const MOST_WAITING = 64;

export class BoxTree {
  /** Triangles in the tree's order. */
  readonly #order: Uint32Array;
  /** Boxes of the triangles in that order. */
  readonly #boxes: Float64Array;
  /** Boxes of the nodes: node 1 is the root, those of node i are 2i and 2i + 1; the last level's are the leaves. */
  readonly #nodes: Float64Array;
  readonly #waiting = new Int32Array(MOST_WAITING);
  /** How many leaves there are, some of them empty. */
  readonly leaves: number;

  /** @param which the triangles that matter, by number */
  constructor(mesh: Mesh, which: Uint32Array) {
    const boxes = boxesOf(mesh, which);
    const order = mortonOrder(boxes);
    this.#order = order.map((i) => which[i]);
    this.#boxes = inOrder(boxes, order);
    this.leaves = 1;
    while (this.leaves * LEAF < order.length) this.leaves *= 2;
    this.#nodes = surround(this.#boxes, this.leaves);
  }

  /** Visits each pair of triangles whose boxes meet, one of them in a leaf, the other in it or in a later one. */
  pairsFrom(leaf: number, visit: (s: number, t: number) => void): void {
    const boxes = this.#boxes;
    const order = this.#order;
    const from = leaf * LEAF;
    const to = Math.min(from + LEAF, order.length);
    for (let i = from; i < to; i++) {
      for (let j = i + 1; j < to; j++) if (meets(boxes, i, boxes, j)) visit(order[i], order[j]);
    }
    // Later leaves lie to the right of the way from the leaf up to the root.
    for (let node = this.leaves + leaf; node > 1; node >>= 1) {
      if ((node & 1) === 0) this.#pairsBelow(node + 1, leaf, visit);
    }
  }

  /** Visits each triangle whose box meets a box: the lowest x, y, z, then the highest. */
  around(box: Float64Array, visit: (t: number) => void): void {
    const waiting = this.#waiting;
    const leaves = this.leaves;
    waiting[0] = 1;
    for (let left = 1; left > 0; ) {
      const node = waiting[--left];
      if (!meets(box, 0, this.#nodes, node)) continue;
      if (node < leaves) {
        waiting[left++] = 2 * node + 1;
        waiting[left++] = 2 * node;
        continue;
      }
      const from = (node - leaves) * LEAF;
      const to = Math.min(from + LEAF, this.#order.length);
      for (let i = from; i < to; i++) if (meets(box, 0, this.#boxes, i)) visit(this.#order[i]);
    }
  }

  #pairsBelow(top: number, leaf: number, visit: (s: number, t: number) => void): void {
    const nodes = this.#nodes;
    const waiting = this.#waiting;
    const leaves = this.leaves;
    waiting[0] = top;
    for (let left = 1; left > 0; ) {
      const node = waiting[--left];
      if (!meets(nodes, leaves + leaf, nodes, node)) continue;
      if (node < leaves) {
        waiting[left++] = 2 * node + 1;
        waiting[left++] = 2 * node;
      } else this.#pairsBetween(leaf, node - leaves, visit);
    }
  }

  #pairsBetween(leaf: number, other: number, visit: (s: number, t: number) => void): void {
    const nodes = this.#nodes;
    const boxes = this.#boxes;
    const order = this.#order;
    const node = this.leaves + other;
    const from = other * LEAF;
    const to = Math.min(from + LEAF, order.length);
    for (let i = leaf * LEAF; i < leaf * LEAF + LEAF; i++) {
      if (!meets(boxes, i, nodes, node)) continue;
      for (let j = from; j < to; j++) if (meets(boxes, i, boxes, j)) visit(order[i], order[j]);
    }
  }
}

function inOrder(boxes: Float64Array, order: Uint32Array): Float64Array {
  const sorted = new Float64Array(boxes.length);
  for (let i = 0, at = 0; i < order.length; i++) {
    const from = BOX * order[i];
    for (let k = 0; k < BOX; k++) sorted[at++] = boxes[from + k];
  }
  return sorted;
}

/** The nodes' boxes: those round their triangles, or round their two halves. An empty one meets nothing. */
function surround(boxes: Float64Array, leaves: number): Float64Array {
  const nodes = new Float64Array(2 * leaves * BOX);
  const count = boxes.length / BOX;
  for (let node = 2 * leaves - 1; node > 0; node--) {
    const isLeaf = node >= leaves;
    const from = isLeaf ? boxes : nodes;
    const first = isLeaf ? (node - leaves) * LEAF : 2 * node;
    const last = isLeaf ? Math.min(first + LEAF, count) : first + 2;
    for (let k = 0; k < 3; k++) {
      let low = Number.POSITIVE_INFINITY;
      let high = Number.NEGATIVE_INFINITY;
      for (let i = BOX * first + k; i < BOX * last; i += BOX) {
        if (from[i] < low) low = from[i];
        if (from[i + 3] > high) high = from[i + 3];
      }
      nodes[BOX * node + k] = low;
      nodes[BOX * node + k + 3] = high;
    }
  }
  return nodes;
}

/** Whether two boxes have a point in common. */
function meets(a: Float64Array, i: number, b: Float64Array, j: number): boolean {
  const p = BOX * i;
  const q = BOX * j;
  return (
    a[p] <= b[q + 3] &&
    b[q] <= a[p + 3] &&
    a[p + 1] <= b[q + 4] &&
    b[q + 1] <= a[p + 4] &&
    a[p + 2] <= b[q + 5] &&
    b[q + 2] <= a[p + 5]
  );
}

/** Writes the box of a triangle: the lowest x, y, z, then the highest. */
export function boxOf({ positions, triangles }: Mesh, t: number, box: Float64Array, at = 0): void {
  const a = 3 * triangles[3 * t];
  const b = 3 * triangles[3 * t + 1];
  const c = 3 * triangles[3 * t + 2];
  for (let k = 0; k < 3; k++) {
    box[at + k] = Math.min(positions[a + k], positions[b + k], positions[c + k]);
    box[at + 3 + k] = Math.max(positions[a + k], positions[b + k], positions[c + k]);
  }
}

function boxesOf(mesh: Mesh, which: Uint32Array): Float64Array {
  const boxes = new Float64Array(BOX * which.length);
  for (let i = 0; i < which.length; i++) boxOf(mesh, which[i], boxes, BOX * i);
  return boxes;
}

/** The numbers of boxes, in the order of their middles along the curve. */
function mortonOrder(boxes: Float64Array): Uint32Array {
  const low = [0, 1, 2].map((k) => least(boxes, k, 1));
  const size = low.map((from, k) => -least(boxes, 3 + k, -1) - from);
  const scale = (2 ** BITS - 1) / (Math.max(...size) || 1);
  const keys = new Uint32Array(boxes.length / BOX);
  for (let i = 0; i < keys.length; i++) {
    for (let k = 0; k < 3; k++) {
      const middle = boxes[BOX * i + k] / 2 + boxes[BOX * i + 3 + k] / 2;
      keys[i] |= SPREAD[Math.floor((middle - low[k]) * scale)] << k;
    }
  }
  return sortedBy(keys);
}

/** The places of keys in ascending order of these, by their digits from the last on; equal ones as they stood. */
function sortedBy(keys: Uint32Array): Uint32Array {
  const radix = 2 ** BITS;
  let order = Uint32Array.from(keys.keys());
  let sorted = new Uint32Array(keys.length);
  for (let shift = 0; shift < 3 * BITS; shift += BITS) {
    const starts = new Uint32Array(radix + 1);
    for (let i = 0; i < keys.length; i++) starts[((keys[i] >>> shift) & (radix - 1)) + 1]++;
    for (let digit = 0; digit < radix; digit++) starts[digit + 1] += starts[digit];
    for (let i = 0; i < keys.length; i++) sorted[starts[(keys[order[i]] >>> shift) & (radix - 1)]++] = order[i];
    [order, sorted] = [sorted, order];
  }
  return order;
}

/** The least of the k-th numbers of boxes, each times a sign. */
function least(boxes: Float64Array, k: number, sign: 1 | -1): number {
  let found = Number.POSITIVE_INFINITY;
  for (let i = k; i < boxes.length; i += BOX) found = Math.min(found, sign * boxes[i]);
  return found;
}

/** Numbers of so many bits with two empty bits between any two. */
const SPREAD = Uint32Array.from({ length: 2 ** BITS }, (_, number) => {
  let spaced = 0;
  for (let k = 0; k < BITS; k++) spaced |= (number & (1 << k)) << (2 * k);
  return spaced;
});
