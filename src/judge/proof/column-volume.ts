/**
 * The volume that a column stands for: ∫ r · (scale + spread t) dt over what it holds. Both the radius and the width across
 * grow in a straight line along it, as on every surface of lines and arcs.
 */
import type { Column } from "./columns.js";
import type { Intervals } from "./intervals.js";

/** mm³ */
export function columnVolume({ stand, weight }: Pick<Column, "stand" | "weight">, set: Intervals): number {
  const { point, way, scale, spread } = stand;
  const r = point[1];
  const upTo = (t: number) =>
    r * scale * t + ((r * spread + way[1] * scale) * t * t) / 2 + (way[1] * spread * t * t * t) / 3;
  let sum = 0;
  for (let i = 0; i < set.length; i += 2) sum += upTo(set[i + 1]) - upTo(set[i]);
  return weight * sum;
}
