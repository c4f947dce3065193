/**
 * A plain field for a hallmark: a rounded rectangle on a surface, sunk or level with it, that nothing else stands in.
 */

import type { Band } from "../band/band.js";
import { flattenPath } from "../base/math/path-data.js";
import type { Point2 } from "../base/math/point.js";
import { finish } from "../base/pausing.js";
import type { HallmarkSpec } from "../design/marks.js";
import { shiftPath, toGrid } from "../flat/grid.js";
import { movedAlong } from "../flat/motion.js";
import { steps } from "../flat/strip.js";
import { type FlatBody, moveBody } from "../relief/flat-body.js";
import { pierceRegion } from "../relief/pierce-region.js";
import { type Mark, makeMark, placeRound, surfaceStrip } from "./mark.js";
import { type MarkSurface, surfaceAt } from "./mark-surface.js";

/** The field, laid out. */
export interface Field {
  readonly surface: MarkSurface;
  /** Its middle, (u, v) on its surface, mm. */
  readonly middle: Point2;
  readonly width: number;
  readonly height: number;
  readonly corner: number;
  /** What is sunk; undefined where it is level with the surface. */
  readonly mark: Mark | undefined;
  /** What is kept free on the seat, through and through; undefined on other surfaces. */
  readonly free: FlatBody | undefined;
}

export interface FieldOptions {
  readonly profile: Band;
  /** θ where the band's facets begin, radians. */
  readonly startAngle: number;
  /** Largest chordal deviation of the mesh, mm. */
  readonly tolerance: number;
  readonly path: string;
}

/**
 * Lays out the field.
 *
 * @throws AnnuletError as `surfaceAt` and `makeMark`
 */
export function makeField(spec: HallmarkSpec, { profile, startAngle, tolerance, path }: FieldOptions): Field {
  const { angle, width, height, corner, depth } = spec;
  const surface = surfaceAt({ ...spec, path }, profile, startAngle);
  const strip = surfaceStrip(surface, tolerance);
  const v = surface.turned ? -spec.v : spec.v;
  const [dx, dy] = [steps(strip, strip.tileWidth / 2), steps(strip, v)].map(Math.round);
  const region = flattenPath(outlineOf(spec), strip.artTolerance).map(({ points }) =>
    shiftPath(toGrid(strip.grid, points), dx, dy),
  );
  const what = "the hallmark's field";
  const making = makeMark(region, {
    surface,
    strip,
    angle,
    mode: "sunk",
    height: depth,
    round: 0,
    draft: 0,
    what,
    path,
  });
  const mark = finish(making);
  const hole = surface.name === "seat" ? pierceRegion(strip, region, { broken: 0, names: [what], path }) : undefined;
  const place = placeRound(surface, angle);
  const free = hole && moveBody(hole, place);
  const middle: Point2 = [movedAlong(strip.tileWidth / 2, place), v];
  return { surface, middle, width, height, corner, mark: depth > 0 ? mark : undefined, free };
}

/** A rounded rectangle about the origin as path data. */
function outlineOf({ width, height, corner }: HallmarkSpec): string {
  const [x, y] = [width / 2 - corner, height / 2];
  const side = width / 2;
  const arc = (toX: number, toY: number) => (corner === 0 ? "" : `A ${corner} ${corner} 0 0 1 ${toX} ${toY}`);
  const top = y - corner;
  return `M ${-x} ${-y} L ${x} ${-y} ${arc(side, -top)} L ${side} ${top} ${arc(x, y)} L ${-x} ${y} ${arc(-side, top)} L ${-side} ${-top} ${arc(-x, -y)} Z`;
}

/**
 * mm from the field's outline to a point in space, along the field's surface; negative inside. The distance to a rounded
 * rectangle is that to the rectangle of its corners' centres, less the corners' radius.
 */
export function distanceToField(
  { surface, middle, width, height, corner }: Field,
  point: readonly [number, number, number],
): number {
  const { wrap } = surface;
  const { round } = wrap;
  const [u, v] = wrap.inverse(...point);
  const along = u - middle[0] - round * Math.round((u - middle[0]) / round);
  const [qx, qy] = [Math.abs(along) - (width / 2 - corner), Math.abs(v - middle[1]) - (height / 2 - corner)];
  return Math.hypot(Math.max(qx, 0), Math.max(qy, 0)) + Math.min(Math.max(qx, qy), 0) - corner;
}
