/**
 * The wall below a section, leaning in by its draft, and the edge between wall and top.
 *
 * The drawn outline is where the wall, gone on straight, meets the level of its top. With draft δ it lies h tan δ
 * farther out at h below that.
 */
import { chordCount } from "../../base/math/curve.js";
import type { Point2 } from "../../base/math/point.js";
import { radians } from "../../base/units.js";

/** The foot of a wall of this height. Empty where it is upright or there is none. */
export function foot(height: number, draft: number): Point2[] {
  return draft > 0 && height > 0 ? [[-height * Math.tan(radians(draft)), 0]] : [];
}

/**
 * Foot, and the edge rounded by `round`: an arc tangent to the wall and to the level top. Its last point is on the top.
 *
 * @param height mm
 * @param round mm, at most the height
 */
export function roundedWall(height: number, round: number, draft: number, tolerance: number): Point2[] {
  const lean = radians(draft);
  const sweep = Math.PI / 2 - lean;
  const count = round === 0 ? 0 : chordCount(round, sweep, tolerance);
  // From the corner to the arc's ends: round / tan of half the corner, 90° + δ; the radius itself where upright.
  const tangent = draft === 0 ? round : (round * Math.cos(lean)) / (1 + Math.sin(lean));
  const arc = Array.from({ length: count + 1 }, (_, i): Point2 => {
    const angle = count === 0 ? Math.PI / 2 : lean + (sweep * i) / count;
    return [round * (1 - Math.cos(angle)) - (round - tangent), height - round * (1 - Math.sin(angle))];
  });
  return [...foot(height, draft), ...arc];
}

/** Foot, and the edge cut off by a bevel that takes `bevel` mm off the top and off the height. */
export function bevelledWall(height: number, bevel: number, draft: number): Point2[] {
  const below = foot(height, draft);
  const start: Point2 = [-bevel * Math.tan(radians(draft)), height - bevel];
  return [...(below.length > 0 && bevel === height ? [] : below), start, [bevel, height]];
}
