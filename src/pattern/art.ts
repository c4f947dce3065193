/**
 * A drawn path, completed: read, flattened, placed on the grid, repeated by its symmetry, united or joined.
 */
import { AnnuletError, type Warn } from "../errors.js";
import { largestWhere } from "../math/largest.js";
import { flattenPath } from "../math/path-data.js";
import type { Point2 } from "../math/point.js";
import { showLength } from "../units.js";
import { type Chain, joinLines } from "./chains.js";
import { type GridPath, type GridPoint, toGrid } from "./grid.js";
import {
  cleanRegion,
  contains,
  type GridRegion,
  offset,
  ribbonAlong,
  ribbonAround,
  ringArea,
  simplify,
  subtract,
  unite,
} from "./polygons.js";
import type { RegionSpec, RibbonSpec } from "./schema.js";
import { clearOfEnds, imagesOf, type Strip, steps } from "./strip.js";

/** Ends of lines nearer than this are one point, mm: art is drawn to three decimals at best. */
export const JOIN_REACH = 1e-3;

/**
 * Gaps and necks narrower than twice this are closed and opened, mm. Above the step of float32 at ring size (1 µm), so
 * that what is apart stays apart in an STL; far below anything that can be cast.
 */
const CLEAN_REACH = 4e-3;

/** What a region's path came to on the strip. */
export interface Art {
  /** The region itself: the filled shape, or the ribbon. */
  readonly region: GridRegion;
  /** Closed border of the drawn shape before a ribbon was taken; empty for open lines. */
  readonly border: GridRegion;
  /** Centre lines of a ribbon. */
  readonly centre: readonly Chain[];
}

/** How far, in tiles, art may reach beyond its own tile. */
const REACH_TILES = 1;

/** Reads a path's subpaths in mm on the strip's row middle, before symmetry. */
export function readArt(
  strip: Strip,
  source: { readonly path: string; readonly unit: "tile" | "mm" },
  tolerance: number,
  where: string,
): { readonly points: readonly Point2[]; readonly closed: boolean }[] {
  const [sx, sy] = source.unit === "mm" ? [1, 1] : [strip.tileWidth, strip.tileHeight / strip.aspect];
  const subpaths = flattenPath(source.path, tolerance / Math.max(sx, sy), { path: where }).map(
    ({ points, closed }) => ({
      points: points.map(([x, y]): Point2 => [x * sx, y * sy]),
      closed,
    }),
  );
  const drawn = subpaths.filter(({ points }) => points.length > 1);
  if (drawn.length === 0) {
    throw new AnnuletError({
      code: "path-empty",
      message: "the path draws nothing",
      path: where,
      value: source.path,
      allowed: "at least one line or curve",
    });
  }
  checkReach(strip, drawn, source, where);
  return drawn;
}

/** Completes a region's art. Warns where the path crosses itself or hairlines had to be cleaned. */
export function completeArt(strip: Strip, spec: RegionSpec, where: string, warn: Warn): Art {
  const subpaths = readArt(strip, spec, strip.artTolerance, `${where}.path`);
  const closed = subpaths.filter((subpath) => subpath.closed).map(({ points }) => toGrid(strip.grid, points));
  const open = subpaths.filter((subpath) => !subpath.closed).map(({ points }) => toGrid(strip.grid, points));
  const chains = joinLines(
    imagesOf(strip, open).map(({ path }) => path),
    steps(strip, JOIN_REACH),
  );
  if (takesSides(spec.ribbon) && chains.some((chain) => !chain.closed && clearRing(strip, chain.points))) {
    throw openPathError(spec, where);
  }
  const shape = fillShape(strip, spec, closed, chains, where, warn);
  if (spec.ribbon === undefined) return { region: tidy(strip, shape, where, warn), border: shape, centre: [] };
  const lines = takesSides(spec.ribbon) ? [] : chains;
  const art = takeRibbon(strip, spec.ribbon, shape, lines, where);
  return { ...art, region: tidy(strip, art.region, where, warn), border: shape };
}

/** Completes a path as lines alone: open ones joined where their images meet, closed ones once each. */
export function completeLines(
  strip: Strip,
  source: { readonly path: string; readonly unit: "tile" | "mm" },
  where: string,
): Chain[] {
  const subpaths = readArt(strip, source, strip.artTolerance * LINE_SHARE, where);
  const images = (closed: boolean) => {
    const paths = subpaths
      .filter((subpath) => subpath.closed === closed)
      .map(({ points }) => toGrid(strip.grid, points));
    return imagesOf(strip, paths).map(({ path }) => path);
  };
  const loops = images(true).map((path) => [...path, path[0]]);
  return joinLines([...images(false), ...loops], steps(strip, JOIN_REACH));
}

/** Lines that only beads follow carry no mesh, so they are flattened this much finer, to be true in length. */
const LINE_SHARE = 0.1;

/** The stretches of lines between two x, grid steps. A loop that is cut becomes open lines. */
export function clipLines(chains: readonly Chain[], low: number, high: number): Chain[] {
  const inside = ({ x }: GridPoint) => x >= low && x <= high;
  return chains.flatMap((chain) => {
    if (chain.points.every(inside)) return [chain];
    const first = chain.closed ? chain.points.findIndex((point) => !inside(point)) : 0;
    const path = chain.closed ? [...chain.points.slice(first), ...chain.points.slice(0, first + 1)] : chain.points;
    return cutLine(path, low, high).map((points): Chain => ({ points, closed: false }));
  });
}

function cutLine(path: GridPath, low: number, high: number): GridPath[] {
  const pieces: GridPath[] = [];
  let piece: GridPath = [];
  for (let i = 0; i + 1 < path.length; i++) {
    const [a, b] = [path[i], path[i + 1]];
    const at = (x: number) => ({ x, y: Math.round(a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x)) });
    if (Math.max(a.x, b.x) < low || Math.min(a.x, b.x) > high) continue;
    const clamp = (point: GridPoint) => (point.x < low ? at(low) : point.x > high ? at(high) : point);
    if (piece.length === 0) piece.push(clamp(a));
    piece.push(clamp(b));
    if (b.x < low || b.x > high) {
      pieces.push(piece);
      piece = [];
    }
  }
  if (piece.length > 1) pieces.push(piece);
  return pieces;
}

/** The filled region of the closed subpaths and of the open ones whose images join into loops. */
function fillShape(
  strip: Strip,
  spec: RegionSpec,
  closed: readonly GridPath[],
  chains: readonly Chain[],
  where: string,
  warn: Warn,
): GridRegion {
  const drawn = closed.length === 0 ? [] : unite(closed, spec.fill);
  if (closed.length > 0) warnSelfCrossing(spec, closed, drawn, where, warn);
  const images = imagesOf(strip, drawn as GridPath[]).map(({ path, flipped }) =>
    flipped ? [...path].reverse() : path,
  );
  const loops = takesSides(spec.ribbon) ? chains.filter((chain) => chain.closed).map(({ points }) => points) : [];
  return unite([...images, ...loops.map((loop) => (ringArea(loop) < 0 ? [...loop].reverse() : loop))]);
}

/** Open lines that close into loops are a border only where the ribbon lies on one side of them, or there is none. */
function takesSides(ribbon: RibbonSpec | undefined): boolean {
  return ribbon === undefined || ribbon.side === "inside" || ribbon.side === "outside";
}

/** The ribbon on the shape's border and along the lines, with the lines it is centred on. */
function takeRibbon(
  strip: Strip,
  ribbon: RibbonSpec,
  shape: GridRegion,
  lines: readonly Chain[],
  where: string,
): Pick<Art, "region" | "centre"> {
  const border = shape.length === 0 ? { region: [], centre: [] } : ribbonOnBorder(strip, ribbon, shape, where);
  const width = steps(strip, ribbon.width);
  const open = lines.filter((line) => !line.closed).map(({ points }) => points);
  const loops = lines.filter((line) => line.closed).map(({ points }) => points);
  const region = unite([
    ...border.region,
    ...ribbonAlong(open, width, ribbon.join, ribbon.ends, strip.arcTolerance),
    ...ribbonAround(loops, width, ribbon.join, strip.arcTolerance),
  ]);
  return { region, centre: [...border.centre, ...lines] };
}

function ribbonOnBorder(
  strip: Strip,
  ribbon: RibbonSpec,
  shape: GridRegion,
  where: string,
): { region: GridRegion; centre: Chain[] } {
  const { arcTolerance } = strip;
  const width = steps(strip, ribbon.width);
  const loops = (rings: GridRegion) => rings.map((points): Chain => ({ points, closed: true }));
  if (ribbon.side === "centre") {
    return { region: ribbonAround(shape, width, ribbon.join, arcTolerance), centre: loops(shape) };
  }
  const sign = ribbon.side === "outside" ? 1 : -1;
  const far = offset(shape, sign * width, ribbon.join, arcTolerance);
  if (sign < 0) checkRibbonFits(strip, ribbon, shape, far, where);
  return {
    region: sign < 0 ? subtract(shape, far) : subtract(far, shape),
    centre: loops(offset(shape, (sign * width) / 2, ribbon.join, arcTolerance)),
  };
}

/** Every outer ring of the shape must keep an inside once the ribbon is taken from it. */
function checkRibbonFits(strip: Strip, ribbon: RibbonSpec, shape: GridRegion, inner: GridRegion, where: string): void {
  const swallowed = (rest: GridRegion, ring: GridPath) =>
    !rest.some((other) => ringArea(other) > 0 && contains(ring, other[0]));
  const lost = shape.find((ring) => ringArea(ring) > 0 && clearRing(strip, ring) && swallowed(inner, ring));
  if (lost === undefined) return;
  const largest = largestWhere(0, ribbon.width, (width) => {
    const rest = offset(shape, -steps(strip, width), ribbon.join, strip.arcTolerance);
    return !swallowed(rest, lost);
  });
  throw new AnnuletError({
    code: "ribbon-too-wide",
    message: `a ribbon ${showLength(ribbon.width)} wide fills its region: nothing is left inside`,
    path: `${where}.ribbon.width`,
    value: ribbon.width,
    allowed: `less than ${showLength(Math.floor(largest * 1000) / 1000)}`,
    hint: "make the ribbon narrower, draw the region larger, or leave the ribbon out to fill it",
  });
}

/** Whether the ring lies where the ends of the strip cannot have changed it. */
export function clearRing(strip: Strip, ring: GridPath): boolean {
  const xs = ring.map(({ x }) => x);
  return clearOfEnds(strip, Math.min(...xs), Math.max(...xs));
}

/** Cleans hairlines where growing or shrinking by a hair changes how many rings there are, and says so. */
export function tidy(strip: Strip, region: GridRegion, where: string, warn: Warn): GridRegion {
  if (region.length === 0) return region;
  const reach = steps(strip, CLEAN_REACH);
  const plain = simplify(region, steps(strip, SIMPLIFY_REACH));
  const count = (distance: number) =>
    offset(plain, distance, "miter", reach).filter((ring) => clearRing(strip, ring)).length;
  const before = plain.filter((ring) => clearRing(strip, ring)).length;
  if (count(reach) === before && count(-reach) === before) return plain;
  warn({
    code: "hairline",
    message: `parts of the region touch or nearly touch: gaps and necks narrower than ${showLength(2 * CLEAN_REACH)} were closed or opened`,
    path: where,
    hint: "let the parts overlap clearly or keep a clear gap between them",
  });
  return cleanRegion(plain, reach);
}

/** Vertices nearer to the line through their neighbours than this carry no shape, mm. */
const SIMPLIFY_REACH = 1e-3;

function warnSelfCrossing(
  spec: RegionSpec,
  closed: readonly GridPath[],
  drawn: GridRegion,
  where: string,
  warn: Warn,
): void {
  if (!closed.some(crossesItself)) return;
  warn({
    code: "path-crosses-itself",
    message: `the path crosses itself; it was united by the fill rule ${spec.fill}, leaving ${drawn.length} outline${drawn.length === 1 ? "" : "s"}`,
    path: `${where}.path`,
    hint: 'draw it without crossings, or choose "fill": "evenodd" where crossings should cut holes',
  });
}

/** A ring that does not cross itself encloses exactly its own signed area; any crossing makes the two differ. */
function crossesItself(ring: GridPath): boolean {
  const signed = Math.abs(ringArea(ring));
  const covered = unite([ring]).reduce((sum, part) => sum + ringArea(part), 0);
  return Math.abs(signed - covered) > SAME_AREA * Math.max(signed, covered);
}

/** Relative difference of two areas that is rounding to the grid and no more. */
const SAME_AREA = 1e-5;

function openPathError(spec: RegionSpec, where: string): AnnuletError {
  const sided = spec.ribbon?.side;
  return new AnnuletError({
    code: "path-open",
    message:
      sided === undefined
        ? "the path is open, and its images under the symmetry do not close it, so it has no inside to fill"
        : `the path is open, so it has no ${sided}`,
    path: `${where}.path`,
    value: spec.path,
    allowed: "a path that ends in Z, or one whose images close into a loop",
    hint:
      sided === undefined
        ? "end the path with Z, or give the region a ribbon"
        : 'end the path with Z, or put the ribbon on the "centre"',
  });
}

/** Art may reach into the neighbouring tile, not further: beyond that the unit or the place is a mistake. */
function checkReach(
  strip: Strip,
  subpaths: readonly { readonly points: readonly Point2[] }[],
  source: { readonly path: string; readonly unit: "tile" | "mm" },
  where: string,
): void {
  const { tileWidth, tileHeight, aspect } = strip;
  const halfHeight = (strip.rows * tileHeight) / 2;
  const slack = tileWidth * REACH_SLACK;
  for (const { points } of subpaths) {
    for (const [u, v] of points) {
      const beyond = u < -REACH_TILES * tileWidth - slack || u > (1 + REACH_TILES) * tileWidth + slack;
      if (!beyond && Math.abs(v) <= halfHeight + slack) continue;
      const unit = source.unit === "mm" ? [1, 1] : [tileWidth, tileHeight / aspect];
      throw new AnnuletError({
        code: "path-outside-tile",
        message: `the path leaves its tile at x ${showNumber(u / unit[0])}, y ${showNumber(v / unit[1])}`,
        path: where,
        value: source.path,
        allowed: `x from ${showNumber((-REACH_TILES * tileWidth) / unit[0])} to ${showNumber(((1 + REACH_TILES) * tileWidth) / unit[0])}, y within ±${showNumber(halfHeight / unit[1])} (unit ${source.unit})`,
        hint:
          source.unit === "tile"
            ? 'a tile is 1 wide and `aspect` high; say "unit": "mm" where the path is in millimetres'
            : 'say "unit": "tile" where the path is in tile widths',
      });
    }
  }
}

/** Rounding of drawn numbers that is let pass at the tile's limits, tile widths. */
const REACH_SLACK = 1e-6;

function showNumber(value: number): string {
  return String(Number(value.toFixed(3)));
}
