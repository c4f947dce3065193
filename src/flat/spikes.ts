/**
 * Spikes: places where a ring turns right back on itself. They enclose nothing, and the polygon library miscounts level
 * ones: it gave a ring of 59 mm² with a spike of 1 µm an area of −35 mm².
 */
import type { GridPath, GridPoint } from "./grid.js";

/** The ring without spikes and repeated points; the ring itself where it has none. */
export function dropSpikes(ring: GridPath): GridPath {
  const count = ring.length;
  const clean = ring.every((point, i) => !turnsBack(ring[(i + count - 1) % count], point, ring[(i + 1) % count]));
  if (clean) return ring;
  const kept: GridPath = [];
  for (const point of ring) {
    while (kept.length > 0 && same(kept[kept.length - 1], point)) kept.pop();
    while (kept.length > 1 && turnsBack(kept[kept.length - 2], kept[kept.length - 1], point)) {
      kept.pop();
      if (same(kept[kept.length - 1], point)) kept.pop();
    }
    kept.push(point);
  }
  return closeCleanly(kept);
}

/** Spikes across the ring's first point. */
function closeCleanly(ring: GridPath): GridPath {
  let [first, last] = [0, ring.length - 1];
  while (last - first >= 2) {
    if (same(ring[first], ring[last]) || turnsBack(ring[last - 1], ring[last], ring[first])) last--;
    else if (turnsBack(ring[last], ring[first], ring[first + 1])) first++;
    else break;
  }
  return last - first >= 2 ? ring.slice(first, last + 1) : [];
}

/** Whether b is a point that the line goes to and straight back from, or one of its neighbours again. */
function turnsBack(a: GridPoint, b: GridPoint, c: GridPoint): boolean {
  const [px, py, qx, qy] = [b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y];
  return px * qy - py * qx === 0 && px * qx + py * qy <= 0;
}

function same(a: GridPoint, b: GridPoint): boolean {
  return a.x === b.x && a.y === b.y;
}
