/**
 * Two stones side by side: the axes half way between them, and what their outlines make of each other there.
 */
import { vec3 } from "gl-matrix";
import type { Point2, Point3 } from "../../../base/math/point.js";
import { PointGrid } from "../../../base/math/point-grid.js";
import type { StoneView } from "./stone-view.js";
import type { Axes } from "./through.js";

/** Pairs of stones whose outlines so far outside their girdles may meet, the earlier one first. */
export function pairsNear(views: readonly StoneView[], by: number): (readonly [StoneView, StoneView])[] {
  const reachOf = ({ length, width }: StoneView) => Math.hypot(length, width) / 2 + by;
  const grid = new PointGrid<StoneView>(2 * Math.max(...views.map(reachOf)));
  return views.flatMap((view) => {
    const { at } = view.placed;
    const near = grid.near(at).filter((other) => vec3.distance(other.placed.at, at) < reachOf(view) + reachOf(other));
    grid.add(at, view);
    return near.map((other) => [other, view] as const);
  });
}

/** x from the first to the second, z the mean of theirs, the origin on the arc through both. */
export function axesBetween(a: StoneView, b: StoneView): Axes & { readonly distance: number } {
  const [one, other] = [a.placed, b.placed];
  const out = vec3.normalize([0, 0, 0], vec3.add([0, 0, 0], one.out, other.out));
  const way = vec3.subtract([0, 0, 0], other.at, one.at);
  const along = vec3.normalize([0, 0, 0], vec3.scaleAndAdd([0, 0, 0], way, out, -vec3.dot(way, out)));
  const distance = vec3.dot(way, along);
  const lean = vec3.dot(vec3.subtract([0, 0, 0], other.out, one.out), along);
  const middle = vec3.lerp([0, 0, 0], one.at, other.at, 1 / 2);
  const at = vec3.scaleAndAdd([0, 0, 0], middle, out, (lean * distance) / 8);
  const across = vec3.cross([0, 0, 0], out, along);
  return { at, along, across, out, distance } as unknown as Axes & { readonly distance: number };
}

/** A stone's outline so far outside its girdle as it is seen along other axes. */
export function outlineSeen(view: StoneView, by: number, { at, along, across }: Axes): Point2[] {
  return view.outlineBeside(by).map(([x, y]) => {
    const off = vec3.subtract([0, 0, 0], view.space([x, y, 0]), at);
    return [vec3.dot(off, along), vec3.dot(off, across)];
  });
}

/** A half plane: what lies inside has nx · x + ny · y ≤ most. */
export interface HalfPlane {
  readonly nx: number;
  readonly ny: number;
  readonly most: number;
}

export function halfPlanes(outline: readonly Point2[]): HalfPlane[] {
  return outline.map(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length];
    return { nx: by - ay, ny: ax - bx, most: (by - ay) * ax + (ax - bx) * ay };
  });
}

/** Where the border of a convex outline goes into another one and out of it: each side cut by all half planes of the other. */
export function crossings(outline: readonly Point2[], other: readonly Point2[]): Point2[] {
  const planes = halfPlanes(other);
  return outline.flatMap(([ax, ay], i): Point2[] => {
    const [bx, by] = outline[(i + 1) % outline.length];
    let [from, to] = [0, 1];
    for (const { nx, ny, most } of planes) {
      const [value, slope] = [nx * ax + ny * ay - most, nx * (bx - ax) + ny * (by - ay)];
      if (slope > 0) to = Math.min(to, -value / slope);
      else if (slope < 0) from = Math.max(from, -value / slope);
      else if (value > 0) to = -1;
    }
    if (to < from) return [];
    const at = (t: number): Point2 => [ax + t * (bx - ax), ay + t * (by - ay)];
    return [...(from > 0 ? [at(from)] : []), ...(to < 1 ? [at(to)] : [])];
  });
}

/** From where to where along x an outline goes at a place across; undefined where it does not come so far. */
export function acrossAt(outline: readonly HalfPlane[], y: number): readonly [from: number, to: number] | undefined {
  let [from, to] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const { nx, ny, most } of outline) {
    if (nx > 0) to = Math.min(to, (most - ny * y) / nx);
    else if (nx < 0) from = Math.max(from, (most - ny * y) / nx);
    else if (ny * y > most) return undefined;
  }
  return from <= to ? [from, to] : undefined;
}

/** A place of the axes in space. */
export function inSpace({ at, along, across, out }: Axes, [x, y, z]: Point3): Point3 {
  const [px, py, pz] = [0, 1, 2].map((k) => at[k] + x * along[k] + y * across[k] + z * out[k]);
  return [px, py, pz];
}
