/**
 * Path data of the outlines that motifs are put together from. All run counter-clockwise, so that several in one path
 * are filled as their union.
 */
import type { Point2 } from "../../base/math/point.js";

/** A circle. */
export function disc(middle: Point2, radius: number): string {
  return oval(middle, radius, radius);
}

/** An ellipse with level and upright axes. */
export function oval([x, y]: Point2, rx: number, ry: number): string {
  const half = (to: number) => `A ${rx} ${ry} 0 0 1 ${to} ${y}`;
  return `M ${x + rx} ${y} ${half(x - rx)} ${half(x + rx)} Z`;
}

/** An upright rectangle. */
export function box(left: number, right: number, low: number, high: number): string {
  return `M ${left} ${low} H ${right} V ${high} H ${left} Z`;
}

/** A bar with round ends, from middle to middle of its end circles. */
export function rod([ax, ay]: Point2, [bx, by]: Point2, width: number): string {
  const r = width / 2;
  const length = Math.hypot(bx - ax, by - ay);
  const [nx, ny] = [(r * (by - ay)) / length, (r * (ax - bx)) / length];
  const end = (x: number, y: number) => `A ${r} ${r} 0 0 1 ${x} ${y}`;
  return `M ${ax + nx} ${ay + ny} L ${bx + nx} ${by + ny} ${end(bx - nx, by - ny)} L ${ax - nx} ${ay - ny} ${end(ax + nx, ay + ny)} Z`;
}

/**
 * A polygon.
 *
 * @param soft how far each corner is rounded: 0 not at all, 1 up to the middle of the shorter of its sides
 */
export function polygon(points: readonly Point2[], soft = 0): string {
  if (soft === 0) return `M ${points.map(([x, y]) => `${x} ${y}`).join(" L ")} Z`;
  const corners = points.map(([x, y], i) => {
    const [before, after] = [points.at(i - 1) as Point2, points[(i + 1) % points.length]];
    const sides = [before, after].map((p) => Math.hypot(p[0] - x, p[1] - y));
    const cut = (soft * Math.min(...sides)) / 2;
    const [from, to] = [before, after].map(
      (p, k): Point2 => [x + ((p[0] - x) * cut) / sides[k], y + ((p[1] - y) * cut) / sides[k]],
    );
    return `${from[0]} ${from[1]} Q ${x} ${y} ${to[0]} ${to[1]}`;
  });
  return `M ${corners.join(" L ")} Z`;
}

/**
 * A petal from tip to tip. Each side is one cubic whose handles stand out by 4/3 of the half width, so that it is as wide
 * as said.
 *
 * @param points how pointed the two tips are: 0 round, 1 as a parabola's; above that slimmer
 */
export function petal(
  [ax, ay]: Point2,
  [bx, by]: Point2,
  width: number,
  points: readonly [from: number, to: number],
): string {
  const length = Math.hypot(bx - ax, by - ay);
  const [ux, uy] = [(bx - ax) / length, (by - ay) / length];
  const out = (2 / 3) * width;
  const at = (along: number, side: number) => `${ax + along * ux - side * uy} ${ay + along * uy + side * ux}`;
  const [first, last] = [(points[0] * length) / 3, length - (points[1] * length) / 3];
  return `M ${ax} ${ay} C ${at(first, -out)} ${at(last, -out)} ${bx} ${by} C ${at(last, out)} ${at(first, out)} ${ax} ${ay} Z`;
}

/** How far along a petal it is widest, share of its length. */
export function widestAt([from, to]: readonly [from: number, to: number]): number {
  return 1 / 2 + (from - to) / 8;
}

/** The point at an angle, radians from the x axis, and a distance from another. */
export function around([x, y]: Point2, turn: number, distance: number): Point2 {
  return [x + distance * Math.cos(turn), y + distance * Math.sin(turn)];
}

/** What `draw` gives for 0, 1 … below `times`, as one path. */
export function repeat(times: number, draw: (i: number) => string): string {
  return Array.from({ length: times }, (_, i) => draw(i)).join(" ");
}
