/**
 * Stones of rows round the band as the cross-section shows them: each row's nearest to the cut, seen along the band and not cut, as
 * drawings show what is set into a part.
 */
import type { Point2, StoneInView, StonesInView } from "../../index.js";
import { valueAt } from "../state/json-text.js";

/** A stone seen along the band. */
export interface StoneSilhouette {
  readonly group: number;
  /** Its outline, convex: mm along the axis and from the axis outward. */
  readonly outline: readonly Point2[];
  /** Of its gem, linear red, green, blue. */
  readonly colour: readonly [number, number, number];
}

/** Heights across the band that are one row's, mm. */
const SAME = 0.01;

/** @param angle of the cut, degrees */
export function stoneSilhouettes(stones: StonesInView, document: unknown, angle: number): StoneSilhouette[] {
  const shown = new Map<string, StoneInView>();
  for (const stone of stones.stones) {
    if (valueAt(document, ["stones", stone.group, "place", "form"]) !== "row") continue;
    const key = `${stone.group} ${Math.round(stone.flat.v / SAME)}`;
    const before = shown.get(key);
    if (before === undefined || away(stone, angle) < away(before, angle)) shown.set(key, stone);
  }
  return [...shown.values()].map((stone) => {
    const { mesh, gem } = stones.bodies[stone.body];
    return { group: stone.group, outline: hull(seenAlong(stone, mesh.positions)), colour: gem.colour };
  });
}

function away({ flat }: StoneInView, angle: number): number {
  const apart = Math.abs(flat.angle - angle) % 360;
  return Math.min(apart, 360 - apart);
}

/** Corners in the plane through the axis and the stone's middle. */
function seenAlong({ at, out, along }: StoneInView, positions: ArrayLike<number>): Point2[] {
  const level = Math.hypot(at[0], at[1]);
  const [ex, ey] = [at[0] / level, at[1] / level];
  const [ox, oy, oz] = out;
  const [ax, ay, az] = along;
  const across = [oy * az - oz * ay, oz * ax - ox * az, ox * ay - oy * ax];
  return Array.from({ length: positions.length / 3 }, (_, i): Point2 => {
    const part = (k: 0 | 1 | 2): number =>
      at[k] + positions[3 * i] * along[k] + positions[3 * i + 1] * across[k] + positions[3 * i + 2] * out[k];
    return [part(2), part(0) * ex + part(1) * ey];
  });
}

/** The convex hull, counter-clockwise (A. M. Andrew, 1979). */
function hull(points: readonly Point2[]): Point2[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (run: readonly Point2[]): Point2[] => {
    const chain: Point2[] = [];
    for (const point of run) {
      while (chain.length > 1 && turn(chain[chain.length - 2], chain[chain.length - 1], point) <= 0) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

function turn([ax, ay]: Point2, [bx, by]: Point2, [cx, cy]: Point2): number {
  return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
}
