/**
 * Relief bodies: the flat section closed by walls and a foot, refined, repeated and bent round the band. What is sunk is
 * such a body upside down.
 *
 * Tile closes to tile by index: the right side takes the vertices of the next tile's left, so no gap can open.
 */

import { splittingAtLines } from "../band/surface/refine.js";
import type { BandSurface } from "../band/surface/surface.js";
import { extent } from "../base/math/extent.js";
import { isWholeRound, type Sector } from "../base/math/round.js";
import { AT_A_BREATH, BREATH, finish, type Pausing } from "../base/pausing.js";
import { TURN } from "../base/units.js";
import { STAY } from "../flat/motion.js";
import type { Mesh } from "../mesh/mesh.js";
import { reverseMesh, transformMesh } from "../mesh/transform.js";
import { turnRound } from "../mesh/turn-round.js";
import { type FlatBody, moveBody } from "../relief/flat-body.js";
import type { Rise } from "../relief/weave/rise-along.js";
import { applyingRise } from "./apply-rise.js";
import { fadedRise, fadingBody } from "./fade.js";
import { makingFlatMesh } from "./flat-mesh.js";
import { requireOpenNormals } from "./open-normals.js";
import { cutSector, flatSector } from "./sector.js";
import {
  type FlatMirrors,
  flippedBody,
  halfTurnedBody,
  loneTile,
  mirroredTile,
  plainTile,
  type Tile,
  tilesRound,
} from "./tile.js";
import { unfolding } from "./unfolded.js";
import { forwardOf } from "./upright-map.js";

export interface BendOptions {
  readonly wrap: BandSurface;
  /** Facets round the whole band. */
  readonly facets: number;
  /** v of the lines on which the seat's own facets lie, mm, ascending. */
  readonly stations: readonly number[];
  /** Tiles round the band. */
  readonly repeats: number;
  /** By which share of a facet the body's own facet lines lie beside the band's. Default half: no edges in edges. */
  readonly aside?: number;
  /** Mirrors of the body, where the ring has some. Default none. */
  readonly mirrors?: FlatMirrors | undefined;
  /** The sector that matters. Default the whole round. */
  readonly sector?: Sector | undefined;
}

const HALF_FACET = 0.5;

export interface ReliefOptions extends BendOptions {
  /** How deep the foot stands in the band, of a sunk body how high the lid stands above the seat, mm, above 0. */
  readonly sink: number;
}

/**
 * The body of a raised region, all the way round. Closed by construction.
 *
 * @throws AnnuletError `height-too-large` where a hollow seat's normals meet below its top
 */
export function buildRelief(shape: FlatBody, options: ReliefOptions): Mesh {
  return finish(buildingRelief(shape, options));
}

/** The same in pieces. */
function* buildingRelief(shape: FlatBody, { sink, ...options }: ReliefOptions): Pausing<Mesh> {
  const flat = yield* fadingBody(yield* makingFlatMesh(shape, sink), shape, sink);
  return yield* bendBody(flat, shape.seam, {
    ...options,
    forward: forwardOf(shape, options.wrap),
    rise: shape.rise && fadedRise(shape.rise, shape.fade),
    inspect: shape.upright ? undefined : (refined) => requireOpenNormals(refined, options.wrap, shape.path),
  });
}

/** The bodies of a raised region, in pieces: all the way round, or in each place where it comes again. None crosses itself. */
export function* buildReliefs(shape: FlatBody, options: ReliefOptions): Pausing<Mesh[]> {
  const { period } = shape;
  if (period !== undefined && !options.wrap.revolved) {
    const placed: Mesh[] = [];
    for (const i of placesOf(shape, options)) {
      const moved = moveBody(shape, { ...STAY, u: i * period });
      placed.push(...(yield* unfolding(yield* buildingRelief(moved, options), moved, options.wrap)));
    }
    return placed;
  }
  const bodies = yield* unfolding(yield* buildingRelief(shape, options), shape, options.wrap);
  if (period === undefined) return bodies.filter(({ triangles }) => triangles.length > 0);
  return placesOf(shape, options).flatMap((i) => {
    const [cos, sin] = [Math.cos((TURN * i) / options.repeats), Math.sin((TURN * i) / options.repeats)];
    return bodies.map((body) => transformMesh(body, [cos, sin, 0, 0, -sin, cos, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1]));
  });
}

/** The places, by number, where a body that comes again reaches into the sector. */
function placesOf({ outline, period = 0 }: FlatBody, { repeats, sector, wrap }: BendOptions): number[] {
  if (sector === undefined) return Array.from({ length: repeats }, (_, i) => i);
  const { low, high } = flatSector(sector, wrap);
  const [left, right] = extent(outline.flat(2).map(([u]) => u));
  const first = Math.ceil((low - right) / period);
  return Array.from({ length: Math.max(0, Math.floor((high - left) / period) - first + 1) }, (_, i) => first + i);
}

/** The bodies to be cut out for a sunk region, in pieces, none of which crosses itself: heights are depths. */
export function* buildSunk(shape: FlatBody, { sink, ...options }: ReliefOptions): Pausing<Mesh[]> {
  const raised = yield* fadingBody(yield* makingFlatMesh(shape, sink), shape, sink);
  const sunk = reverseMesh({
    ...raised,
    positions: raised.positions.map((value, i) => (i % 3 === 2 ? -value : value)),
  });
  const bent = yield* bendBody(sunk, shape.seam, { ...options, forward: forwardOf(shape, options.wrap) });
  return yield* unfolding(bent, shape, options.wrap);
}

export interface BendBodyOptions extends BendOptions {
  readonly forward: BandSurface["forward"];
  /** What is added to the heights. Default nothing. */
  readonly rise?: Rise | undefined;
  /** Looks at what is refined and not yet bent; throws where it cannot be. Default no look. */
  readonly inspect?: ((refined: Mesh) => void) | undefined;
}

/**
 * A flat body refined to the band's facets, bent by `forward` and repeated, in pieces.
 *
 * @param seam u of the sides that neighbouring tiles share; undefined where the body ends by itself
 */
export function* bendBody(
  flat: Mesh,
  seam: readonly [number, number] | undefined,
  options: BendBodyOptions,
): Pausing<Mesh> {
  const { forward, repeats, sector, wrap, mirrors } = options;
  const refine = function* (mesh: Mesh): Pausing<Mesh> {
    const across = yield* splittingAtLines(mesh, 0, facetLines(mesh, options));
    const split = yield* splittingAtLines(across, 1, options.stations);
    const refined = options.rise === undefined ? split : yield* applyingRise(split, options.rise);
    yield BREATH;
    options.inspect?.(refined);
    return refined;
  };
  if (seam === undefined && mirrors === undefined) return yield* bend(yield* refine(flat), forward);
  const asTile = (mesh: Mesh) => (seam === undefined ? loneTile(mesh, wrap.round) : plainTile(mesh, seam));
  const tile = yield* alikeTile(flat, { asTile, round: wrap.round }, mirrors, refine);
  // What goes all the way round has no ends where it could be cut open; it is left as it is in the whole round.
  const whole = sector === undefined || (isWholeRound(sector) && seam !== undefined);
  if (whole && wrap.revolved) return yield* bendRound(tile, { forward, repeats });
  if (whole) return yield* bend(tilesRound(tile, repeats), forward);
  return yield* cutSector(tile, flatSector(sector, wrap), (mesh) => bend(mesh, forward));
}

/** The tile of a body, as symmetric as the body is. */
function* alikeTile(
  flat: Mesh,
  { asTile, round }: { readonly asTile: (mesh: Mesh) => Tile; readonly round: number },
  mirrors: FlatMirrors | undefined,
  refine: (mesh: Mesh) => Pausing<Mesh>,
): Pausing<Tile> {
  if (mirrors?.across) return yield* mirroredTile(asTile(flat), mirrors, refine);
  if (mirrors?.halfTurned) return asTile(yield* halfTurnedBody(flat, { axis: mirrors.axis, round }, refine));
  return asTile(yield* mirrors?.middle ? flippedBody(flat, refine) : refine(flat));
}

/** u of lines that the band's facets have within the mesh, mm, moved by a share of a facet. */
function facetLines(flat: Mesh, { wrap, facets, aside = HALF_FACET, mirrors }: BendOptions): number[] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < flat.positions.length; i += 3) {
    low = Math.min(low, flat.positions[i]);
    high = Math.max(high, flat.positions[i]);
  }
  const step = wrap.round / facets;
  const origin = mirrors?.axis ?? 0;
  const first = Math.ceil((low - origin) / step - aside);
  const count = Math.max(0, Math.floor((high - origin) / step - aside) - first + 1);
  return Array.from({ length: count }, (_, i) => origin + (first + i + aside) * step);
}

function* bend(flat: Mesh, forward: BandSurface["forward"]): Pausing<Mesh> {
  const positions = new Float64Array(flat.positions.length);
  for (let i = 0; i < positions.length; i += 3) {
    if (i % (3 * AT_A_BREATH) === 0) yield BREATH;
    positions.set(forward(flat.positions[i], flat.positions[i + 1], flat.positions[i + 2]), i);
  }
  return { positions, triangles: flat.triangles };
}

/** One tile bent and turned to each place; its right side takes the next tile's left vertices, so no gap can open. */
function* bendRound(
  { mesh: flat, follows }: Tile,
  { forward, repeats }: Pick<BendOptions, "repeats"> & { readonly forward: BandSurface["forward"] },
): Pausing<Mesh> {
  return turnRound({ mesh: yield* bend(flat, forward), follows }, repeats);
}
