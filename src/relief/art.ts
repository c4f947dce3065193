/**
 * A drawn path, completed: repeated by its symmetry, united into a region or joined into lines, its ribbon taken.
 */

import { type ArtSource, type DrawnPaths, readArt } from "../art/read-art.js";
import { ShapeDrawer } from "../art/shapes/draw-shape.js";
import { drawingKey } from "../art/svg/drawing-key.js";
import { drawingOf, readingSvgArt, readingTextArt } from "../art/svg-art.js";
import { AnnuletError, type Warn } from "../base/errors.js";
import { finish, type Pausing } from "../base/pausing.js";
import { Work } from "../base/work.js";
import { artField } from "../design/art-rules.js";
import { type StandsOn, standsOn, type TilesSpec } from "../design/cycle.js";
import type { DrawingUnit } from "../design/path-schema.js";
import type { RegionSpec } from "../design/pattern/region.js";
import type { ShapeSpec } from "../design/shapes/shape-spec.js";
import { type Chain, JOIN_REACH, joinLines } from "../flat/chains.js";
import { fillingPath } from "../flat/fill-path.js";
import type { GridPath } from "../flat/grid.js";
import { partAtEdges } from "../flat/part-at-edges.js";
import { type GridRegion, ringArea, uniting } from "../flat/polygons.js";
import { clearRing, imagesOf, mostImages, type Strip, steps } from "../flat/strip.js";
import { tidying } from "../flat/tidy.js";
import { composeRegion, cutLines, isComposed, type OtherRegion } from "./compose-region.js";
import { treatEdge } from "./edges/treat-edge.js";
import { taperAlong } from "./ribbons/taper-along.js";
import { widestOf } from "./ribbons/tapered-ribbon.js";
import { halfSpan, takeRibbon, takesSides } from "./take-ribbon.js";

/** Lines that only beads follow carry no mesh, so they are flattened this much finer, to be true in length. */
const LINE_SHARE = 0.1;

/** What lines alone are drawn from. */
export type LineSource = (ArtSource | { readonly shape: ShapeSpec; readonly unit: DrawingUnit }) & {
  readonly tiles?: TilesSpec | undefined;
};

/** What of a region its art depends on: not how it stands above the seat, nor what stands on it. */
export type ArtSpec = Omit<RegionSpec, "beads" | "height" | "depth" | "round" | "section">;

/** What a region's path came to on the strip. */
export interface Art {
  /** The region itself: the filled shape, or the ribbon. */
  readonly region: GridRegion;
  /** Closed border of the shape before a ribbon was taken; empty for open lines and for ribbons composed with others. */
  readonly border: GridRegion;
  /** Centre lines of a ribbon. */
  readonly centre: readonly Chain[];
}

/** What a region's art may be made of beside itself. */
export interface ArtSources {
  /** Draws shapes, with the named ones and the files that they may be made of. Default: none. */
  readonly drawer?: ShapeDrawer;
  /** Finds the completed regions that this one names. Default: none. */
  readonly other?: OtherRegion;
  /** Counts the corners of all images. Default: within the default limits. */
  readonly work?: Work;
}

/**
 * Completes a region's art. Warns where the path crosses itself or hairlines had to be cleaned.
 *
 * @param where the region's place in the document
 * @throws AnnuletError `path-open` where an inside is wanted of a line that closes nowhere, `path-empty`,
 *   `path-outside-tile`, `ribbon-too-wide`, and as `flattenPath`, `readSvgArt`, `composeRegion`
 */
export function completeArt(strip: Strip, spec: ArtSpec, where: string, warn: Warn, sources: ArtSources = {}): Art {
  return finish(completingArt(strip, spec, where, warn, sources));
}

/** The same in pieces. */
export function* completingArt(
  strip: Strip,
  spec: ArtSpec,
  where: string,
  warn: Warn,
  sources: ArtSources = {},
): Pausing<Art> {
  const { drawer = new ShapeDrawer(strip, { warn }), other = noOther, work = new Work() } = sources;
  const on = standsOn(spec.tiles, strip.drawnCycle, `${where}.tiles`);
  const read = yield* readingRegion(strip, spec, drawer, where, warn);
  work.addCorners((cornersOf(read.closed) + cornersOf(read.open)) * mostImages(strip), `${where}.${artField(spec)}`);
  yield where;
  const { closed, open } = spec.ribbon?.weave === undefined ? read : asLines(read);
  const ribbonReach = reachOf(strip, spec);
  const chains = joinLines(
    imagesOf(strip, open, { reach: ribbonReach, on }).map(({ path }) => path),
    steps(strip, JOIN_REACH),
  );
  if (takesSides(spec.ribbon) && chains.some((chain) => !chain.closed && clearRing(strip, chain.points))) {
    throw openPathError(spec, where);
  }
  yield where;
  const shape = yield* fillShape(strip, spec, { closed, chains, on }, where, { warn, work });
  yield where;
  const compose = function* (region: GridRegion) {
    const composed = isComposed(spec) ? composeRegion(strip, spec, region, other, where) : region;
    const edged = spec.edge === undefined ? composed : treatEdge(strip, composed, spec.edge, `${where}.edge`, warn);
    yield where;
    return { composed, tidied: yield* tidying(strip, edged, where, warn) };
  };
  if (spec.ribbon === undefined) {
    const { composed, tidied } = yield* compose(shape);
    return { region: tidied, border: composed, centre: [] };
  }
  const lines = takesSides(spec.ribbon) ? [] : chains;
  const tapered = taperAlong(strip, spec.ribbon, { closed, open, border: shape, chains: lines, on }, where);
  const { region, centre } = tapered ?? takeRibbon(strip, spec.ribbon, shape, lines, where);
  yield where;
  const { composed, tidied } = yield* compose(region);
  if (composed === region) return { region: tidied, border: shape, centre };
  return { region: tidied, border: [], centre: cutLines(strip, centre, composed) };
}

/** For regions that stand alone. */
function noOther(name: string, where: string): never {
  throw new AnnuletError({
    code: "region-unknown",
    message: `no region has the name ${JSON.stringify(name)}`,
    path: where,
    value: name,
  });
}

function* readingRegion(
  strip: Strip,
  spec: ArtSpec,
  drawer: ShapeDrawer,
  where: string,
  warn: Warn,
): Pausing<DrawnPaths> {
  const { artTolerance: tolerance } = strip;
  const { path = "", svg, take, shape, motif, text, unit, beneath } = spec;
  if (shape !== undefined) return drawer.draw(shape, { unit, tolerance, where: `${where}.shape`, beneath });
  if (motif !== undefined) return drawer.draw({ motif }, { unit, tolerance, where });
  if (text !== undefined) return yield* readingTextArt(strip, { ...spec, text }, drawer.drawings, `${where}.text`);
  if (svg === undefined) return readArt(strip, { path, unit, beneath }, tolerance, `${where}.path`);
  const file = `${where}.svg`;
  const drawing = drawingOf(drawingKey({ svg, take }), drawer.drawings, file);
  return yield* readingSvgArt(strip, { ...spec, svg }, drawing, { tolerance, where: file, warn });
}

/**
 * Completes a path or shape as lines alone: open ones joined where their images meet, closed ones once each.
 *
 * @param where the source's place in the document
 * @param drawer draws shapes; default one that knows no names
 */
export function completeLines(
  strip: Strip,
  source: LineSource,
  where: string,
  drawer = new ShapeDrawer(strip, { warn: () => undefined }),
): Chain[] {
  const tolerance = strip.artTolerance * LINE_SHARE;
  const drawn =
    "path" in source
      ? readArt(strip, source, tolerance, `${where}.path`)
      : drawer.draw(source.shape, { unit: source.unit, tolerance, where: `${where}.shape` });
  const isCut = "shape" in source && drawer.isCut(source.shape);
  const { closed, open } = isCut ? withoutCuts(strip, drawn) : drawn;
  const tiles = `${where}.tiles`;
  const images = imagesOf(strip, asLines({ closed, open }).open, {
    on: standsOn(source.tiles, strip.drawnCycle, tiles),
  }).map(({ path }) => path);
  return joinLines(images, steps(strip, JOIN_REACH));
}

/** What is drawn, without the sides that the tile's edges gave to copies that they cut off. */
function withoutCuts(strip: Strip, drawn: DrawnPaths): DrawnPaths {
  const { closed, open } = partAtEdges(drawn.closed, strip.rowStep / 2);
  return { closed, open: [...drawn.open, ...open] };
}

/** Closed paths as lines that end where they begin: woven ones cross themselves, and no outline is taken of them. */
function asLines({ closed, open }: DrawnPaths): DrawnPaths {
  return { closed: [], open: [...open, ...closed.map((path) => [...path, path[0]])] };
}

function cornersOf(paths: readonly GridPath[]): number {
  return paths.reduce((sum, path) => sum + path.length, 0);
}

/** How far a region may reach beyond what is drawn, grid steps. */
function reachOf(strip: Strip, { ribbon, offset = 0 }: ArtSpec): number {
  const across = ribbon === undefined ? 0 : Math.max(widestOf(ribbon), 2 * halfSpan(ribbon));
  return steps(strip, across + Math.max(offset, 0));
}

/** The filled region of the closed subpaths and of the open ones whose images join into loops. */
function* fillShape(
  strip: Strip,
  spec: ArtSpec,
  {
    closed,
    chains,
    on,
  }: { readonly closed: readonly GridPath[]; readonly chains: readonly Chain[]; readonly on: StandsOn | undefined },
  where: string,
  { warn, work }: { readonly warn: Warn; readonly work: Work },
): Pausing<GridRegion> {
  const field = `${where}.${artField(spec)}`;
  const drawn = yield* fillingPath(closed, spec.fill, field, warn);
  // Where it crosses itself it has more corners now.
  work.addCorners(Math.max(0, cornersOf(drawn) - cornersOf(closed)) * mostImages(strip), field);
  yield where;
  const images = imagesOf(strip, drawn, { reach: reachOf(strip, spec), on }).map(({ path, flipped }) =>
    flipped ? [...path].reverse() : path,
  );
  yield where;
  const loops = takesSides(spec.ribbon) ? chains.filter((chain) => chain.closed).map(({ points }) => points) : [];
  return yield* uniting([...images, ...loops.map((loop) => (ringArea(loop) < 0 ? [...loop].reverse() : loop))]);
}

function openPathError(spec: ArtSpec, where: string): AnnuletError {
  const sided = spec.ribbon?.side;
  return new AnnuletError({
    code: "path-open",
    message:
      sided === undefined
        ? "the path is open, and its images under the symmetry do not close it, so it has no inside to fill"
        : `the path is open, so it has no ${sided}`,
    path: `${where}.${artField(spec)}`,
    value: spec[artField(spec)],
    allowed: "a path that ends in Z, or one whose images close into a loop",
    hint:
      sided === undefined
        ? "end the path with Z, or give the region a ribbon"
        : 'end the path with Z, or put the ribbon on the "centre"',
  });
}
