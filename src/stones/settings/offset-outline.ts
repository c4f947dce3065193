/**
 * Convex outlines beside each other: every side moved out by as much, with as many points as before.
 */
import type { Point2 } from "../../base/math/point.js";

/**
 * The outline whose sides lie so far outside of another's, or inside where that is below 0.
 *
 * @param outline convex, counter-clockwise
 * @param by mm; inward no more than the sides leave room for
 */
export function offsetOutline(outline: readonly Point2[], by: number): Point2[] {
  const count = outline.length;
  return outline.map(([x, y], i) => {
    const [nx, ny] = outwardOf(outline[(i + count - 1) % count], [x, y]);
    const [mx, my] = outwardOf([x, y], outline[(i + 1) % count]);
    // Both sides move by as much: along the bisector by more, the sharper the corner.
    const share = by / (1 + nx * mx + ny * my);
    return [x + share * (nx + mx), y + share * (ny + my)];
  });
}

/** Unit normal of a side, outward of a counter-clockwise outline. */
function outwardOf([ax, ay]: Point2, [bx, by]: Point2): Point2 {
  const length = Math.hypot(bx - ax, by - ay);
  return [(by - ay) / length, (ax - bx) / length];
}

/** Points of circles are a multiple of this, so that each is its own image under mirrors along and across. */
const QUARTERS = 8;

/** Corners of a circle whose chords stand off by at most a tolerance. */
export function circleCorners(radius: number, tolerance: number): number {
  const least = Math.PI / Math.acos(1 - Math.min(tolerance / radius, COARSEST));
  return QUARTERS * Math.max(1, Math.ceil(least / QUARTERS));
}

/** No circle has fewer than eight corners. */
const COARSEST = 1 - Math.cos(Math.PI / QUARTERS);

/**
 * A circle as a polygon: `around`, its sides touch the circle, so that nothing of it is lost; `even`, corners stand out as far as
 * sides fall short.
 */
export function circle(radius: number, corners: number, lies: "around" | "even"): Point2[] {
  const half = Math.cos(Math.PI / corners);
  const far = lies === "around" ? radius / half : (2 * radius) / (1 + half);
  return Array.from({ length: corners }, (_, i) => {
    // Sides, not corners, face along and across.
    const angle = (2 * Math.PI * (i + 0.5)) / corners;
    return [far * Math.cos(angle), far * Math.sin(angle)];
  });
}
