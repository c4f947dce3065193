/**
 * One unit of a completed pattern as flat regions: what is raised, how high, what is sunk and what goes through.
 */
import type { Point2 } from "../../base/math/point.js";
import { type Grid, gridFor, toGrid } from "../../flat/grid.js";
import { type GridRegion, offset, simplify, subtract, unite } from "../../flat/polygons.js";
import type { Pattern } from "../../pattern/laid-out.js";
import { workSteps } from "../../pattern/work-steps.js";
import type { FlatBody } from "../../relief/flat-body.js";
import { tileOutlines } from "../../relief/tile-outlines.js";

/** Regions of one unit and some of its neighbours, on a grid; u from the span's left end. */
export interface FlatArt {
  readonly grid: Grid;
  /** Where the unit itself lies, from u to u, mm. */
  readonly core: readonly [low: number, high: number];
  /** Half the seat's length, mm. */
  readonly halfSeat: number;
  /** Length of the span, mm. */
  readonly length: number;
  /** u of the whole band at which the span begins, mm. */
  readonly start: number;
  /** All that is raised, after what was cut out of it. Height maps, whose outline fades, are left out here and below. */
  readonly raised: GridRegion;
  /** What is raised at least so high, mm, for each height there is. */
  readonly levels: readonly { readonly height: number; readonly region: GridRegion }[];
  readonly sunk: readonly { readonly depth: number; readonly region: GridRegion }[];
  readonly pierced: GridRegion;
}

/** Neighbours on either side, mm: more than the widest gap or line that is looked for. */
const MARGIN = 2;

/** Gaps narrower than twice this are rounding, mm. */
const HAIRLINE = 1e-3;

/** Vertices this near to the line through their neighbours are dropped, mm. */
const SIMPLIFY = 1e-3;

export interface FlatArtOptions {
  /** Length of the band at the reference radius, mm. */
  readonly around: number;
  /** mm */
  readonly seatLength: number;
}

export function flatArt(pattern: Pattern, { around, seatLength }: FlatArtOptions): FlatArt {
  const unit = around / pattern.repeats;
  const margin = Math.min(MARGIN, unit);
  const [start, length] = [-margin, unit + 2 * margin];
  const grid = gridFor(length);
  const stretch = { tileWidth: length, seatLength, tiles: 1 };
  // What stands once comes round again after the whole band, and may reach over the unit's left end.
  const place = (shape: FlatBody): readonly (readonly Point2[])[] => {
    const alone = shape.seam === undefined && shape.period === undefined;
    return tileOutlines(alone ? { ...shape, period: around } : shape, { ...stretch, origin: [start, 0] });
  };
  const placed = new Map<FlatBody["outline"], GridRegion>();
  const ringsOf = (shape: FlatBody): GridRegion => {
    const known = placed.get(shape.outline) ?? place(shape).map((ring) => toGrid(grid, ring));
    placed.set(shape.outline, known);
    return known;
  };
  const onGrid = (shapes: readonly FlatBody[]) => smooth(unite(shapes.flatMap(ringsOf)), grid);
  const { bodies } = pattern;
  const steps = workSteps(bodies, ({ mode }) => mode);
  /** What of some raised bodies is left when all that is cut after each of them is cut. */
  const left = (counts: (shape: FlatBody) => boolean): GridRegion => {
    let region: GridRegion = [];
    for (const { op, items } of steps) {
      if (op === "add") region = unite(region.concat(onGrid(items.filter(counts))));
      else region = subtract(region, onGrid(items));
    }
    return region;
  };
  const all = (mode: FlatBody["mode"]) => bodies.filter((body) => body.mode === mode);
  const plain = all("raised").filter(({ surface }) => surface === undefined);
  const heights = [...new Set(plain.map(({ height }) => Number(height.toFixed(3))))].sort((a, b) => a - b);
  return {
    grid,
    core: [margin, margin + unit],
    halfSeat: seatLength / 2,
    length,
    start,
    raised: left(({ surface }) => surface === undefined),
    levels: heights.map((height) => ({
      height,
      region: left((shape) => shape.surface === undefined && shape.height >= height - HEIGHT_SLACK),
    })),
    sunk: all("sunk")
      .filter(({ surface }) => surface === undefined)
      .map((shape) => ({ depth: shape.height, region: onGrid([shape]) })),
    pierced: onGrid(all("pierced")),
  };
}

/** Without the hairlines between periods that were rounded apart, and without vertices that say nothing. */
function smooth(region: GridRegion, grid: Grid): GridRegion {
  const reach = HAIRLINE * grid.scale;
  const closed = offset(offset(region, reach, "miter", reach), -reach, "miter", reach);
  return simplify(closed, SIMPLIFY * grid.scale);
}

/** Heights nearer than this are one, mm: what they were rounded to. */
const HEIGHT_SLACK = 1e-3;
