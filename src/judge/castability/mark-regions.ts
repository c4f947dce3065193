/**
 * Texts and other marks as flat regions, each on the grid of its own surface.
 */
import { type Grid, gridFor, toGrid } from "../../flat/grid.js";
import { type GridRegion, unite } from "../../flat/polygons.js";
import type { Mark } from "../../marks/mark.js";
import type { Marks } from "../../marks/marks.js";
import type { Place } from "./piece.js";

export interface MarkRegion {
  readonly mark: Mark;
  readonly grid: Grid;
  /** Its lowest contour. */
  readonly region: GridRegion;
}

/** All marks of a design, the hallmark's among them. */
export function marksOf({ marks, field }: Marks): readonly Mark[] {
  return field?.mark === undefined || marks.includes(field.mark) ? marks : [field.mark, ...marks];
}

export function markRegion(mark: Mark): MarkRegion {
  const grid = gridFor(mark.surface.wrap.round);
  const rings = mark.body.outline.flat().map((ring) =>
    toGrid(
      grid,
      ring.map(([u, v]) => [u, v] as const),
    ),
  );
  return { mark, grid, region: unite(rings) };
}

/** Where (u, v) of a mark's surface lies in space. */
export function markPlace({ surface }: Mark, [u, v]: readonly [u: number, v: number]): Place {
  return { space: surface.wrap.forward(u, v, 0) };
}
