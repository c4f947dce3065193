/**
 * A region in clusters: parts, with their holes, whose outlines come near each other. What shrinks or grows by no more than
 * that is worked cluster by cluster, since no other outline is in its way.
 */
import type { GridBox } from "./box.js";
import { BoxTree } from "./box-tree.js";
import type { GridPath } from "./grid.js";
import { Owners } from "./owners.js";
import { type GridRegion, ringArea } from "./polygons.js";

/**
 * The region's rings, each in one cluster. Two outlines of which a side of one has a box within `reach` grid steps of that
 * of a side of the other are in one cluster, and so is a hole with its outer ring.
 */
export function clustersOf(region: GridRegion, reach: number): GridPath[][] {
  const leader = region.map((_, i) => i);
  const find = (i: number): number => {
    let at = i;
    while (leader[at] !== at) {
      leader[at] = leader[leader[at]];
      at = leader[at];
    }
    return at;
  };
  const join = (a: number, b: number) => {
    leader[Math.max(find(a), find(b))] = Math.min(find(a), find(b));
  };
  const owners = new Owners(region);
  const numbers = new Map(region.map((ring, i) => [ring, i]));
  region.forEach((ring, i) => {
    const owner = ringArea(ring) < 0 ? owners.ownerOf(ring) : undefined;
    if (owner !== undefined) join(i, numbers.get(owners.outers[owner]) ?? i);
  });
  const sides = region.flatMap((ring, owner) => sidesOf(ring).map((box) => ({ box, owner })));
  const tree = new BoxTree(sides.map(({ box }) => box));
  for (const { box, owner } of sides) {
    for (const other of tree.meeting(around(box, reach))) join(owner, sides[other].owner);
  }
  const clusters = new Map<number, GridPath[]>();
  region.forEach((ring, i) => {
    const cluster = clusters.get(find(i));
    if (cluster === undefined) clusters.set(find(i), [ring]);
    else cluster.push(ring);
  });
  return [...clusters.values()];
}

function sidesOf(ring: GridPath): GridBox[] {
  return ring.map((a, i) => {
    const b = ring[(i + 1) % ring.length];
    return { left: Math.min(a.x, b.x), right: Math.max(a.x, b.x), low: Math.min(a.y, b.y), high: Math.max(a.y, b.y) };
  });
}

function around({ left, right, low, high }: GridBox, by: number): GridBox {
  return { left: left - by, right: right + by, low: low - by, high: high + by };
}
