/**
 * A height field as a relief body: the surface where it is above its level, which ends in low upright walls there. The
 * body never lies along the seat: where nothing is there, it is not either.
 *
 * A foot along the seat would leave slivers in the union. Samples keep clear of the level, so that the outline is
 * simple curves that never touch; the foot has the same outline with fewer triangles.
 */

import {
  bordersOf,
  cutTriangles,
  cuttingTriangles,
  type FlatTriangles,
  findingBorders,
} from "../../art/image/flat-triangles.js";
import type { HeightField } from "../../art/image/height-field.js";
import { thinningOut } from "../../art/image/thin-out.js";
import type { Point3 } from "../../base/math/point.js";
import { finish, type Pausing } from "../../base/pausing.js";
import { nestRings } from "../../flat/cell.js";
import type { FlatBody, ReliefPolygon } from "../flat-body.js";
import type { SectionOptions } from "../section.js";

/** A side is cut no nearer to its ends than this share of it, so that no triangle becomes a sliver. */
const CUT_MARGIN = 0.15;

/**
 * Share of the tolerance by which thinning may change the surface. A caster would not show facets of a whole one, but they
 * glint: a wave's slopes looked mottled at 5 µm and smooth at 1 µm.
 */
const THINNING_SHARE = 0.2;

export interface FieldOptions extends Pick<SectionOptions, "mode" | "names" | "where" | "fade" | "upright"> {
  /** mm, of the mesh. */
  readonly tolerance: number;
}

/** Raises a field. */
export function raiseField(field: HeightField, options: FieldOptions): FlatBody {
  return finish(raisingField(field, options));
}

/** The same in pieces. */
export function* raisingField(
  field: HeightField,
  { mode, names, where, fade, upright = false, tolerance }: FieldOptions,
): Pausing<FlatBody> {
  const { left, right, level, heights, columns, rows, repeats, copies } = field;
  const points = pointsOf(field);
  const part = (triangles: readonly number[]) =>
    cuttingTriangles(
      { points, triangles },
      {
        stays: (place) => heights[place] > level,
        cutAt: (stays, goes) => {
          const share = (heights[stays] - level) / (heights[stays] - heights[goes]);
          const t = Math.min(1 - CUT_MARGIN, Math.max(CUT_MARGIN, share));
          const [[au, av], [bu, bv]] = [points[stays], points[goes]];
          return [au === bu ? au : au + t * (bu - au), av + t * (bv - av), level];
        },
      },
    );
  const surface = yield* part(yield* thinningOut(field, THINNING_SHARE * tolerance));
  // Beneath, all is level: the same outline with as few triangles as it needs.
  const there = heights.map((height) => (height > level ? 1 : 0));
  const foot = yield* part(yield* thinningOut({ ...field, heights: there, level: 0 }, 0));
  let height = 0;
  for (let place = 0; place < (columns + 1) * (rows + 1); place++) height = Math.max(height, heights[place]);
  return {
    mode,
    names,
    path: where,
    made: undefined,
    upright,
    top: [],
    surface: { top: surface, foot },
    outline: polygonsOf(yield* findingBorders(surface)),
    throat: [],
    seam: repeats ? [left, right] : undefined,
    period: undefined,
    copies,
    height,
    rise: undefined,
    fade,
  };
}

function pointsOf({ left, right, low, high, columns, rows, heights }: HeightField): Point3[] {
  return Array.from(heights, (height, place): Point3 => {
    const [x, y] = [place % (columns + 1), Math.floor(place / (columns + 1))];
    return [x === columns ? right : left + (x * (right - left)) / columns, low + (y * (high - low)) / rows, height];
  });
}

/** Rings as polygons with their holes. */
function polygonsOf(rings: readonly (readonly Point3[])[]): ReliefPolygon[] {
  const levelRings = rings.map((ring) => ring.map(([x, y, h]) => ({ x, y, h })));
  return nestRings(levelRings).map(({ outer, holes }) =>
    [outer, ...holes].map((ring) => ring.map(({ x, y, h }): Point3 => [x, y, h])),
  );
}

/** The outlines of what of a surface is higher than a height, as polygons. */
export function outlineAbove(surface: FlatTriangles, height: number): ReliefPolygon[] {
  const { points } = surface;
  const higher = cutTriangles(surface, {
    stays: (point) => points[point][2] > height,
    cutAt: (stays, goes) => {
      const [a, b] = [points[stays], points[goes]];
      const t = (a[2] - height) / (a[2] - b[2]);
      return [a[0] === b[0] ? a[0] : a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), height];
    },
  });
  return polygonsOf(bordersOf(higher));
}
