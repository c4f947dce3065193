/**
 * The bore of any ring: the largest cylinder that goes through it, as ISO 8653 measures ring sizes. It is looked for along
 * x, y, z and the principal axis of inertia that stands alone, as the largest circle in a hole of the mesh's shadow; the
 * circle is exact, held by the shadow's edges.
 *
 * A ring that lies askew in its file and has a heavy top is measured along an axis that is not quite its own, so that
 * its bore comes out small.
 */
import { type Circle, growCircle } from "../../base/math/empty-circle.js";
import type { Point2, Point3 } from "../../base/math/point.js";
import { type OptionRules, requireOptions } from "../../base/options.js";
import type { Mesh } from "../../mesh/mesh.js";
import { requireSound } from "../../mesh/sound.js";
import { FILE_AXES, loneAxis } from "./axes.js";
import { findHollows, type Hollows } from "./shadow.js";
import { ShadowEdges } from "./shadow-edges.js";

/** The largest cylinder that goes through a mesh. */
export interface Bore {
  /** Direction of its axis, of length 1. */
  readonly axis: Point3;
  /** The point of its axis nearest to the origin, mm. */
  readonly through: Point3;
  /** mm */
  readonly diameter: number;
  /** mm */
  readonly circumference: number;
}

/** What helps to find the bore: what `measureMesh` gives will do. */
export interface BoreOptions {
  /** Moments of inertia of the solid, to find a bore that lies askew. Default: only x, y and z are tried. */
  readonly inertia?: readonly [Point3, Point3, Point3] | undefined;
}

const RULES: OptionRules<BoreOptions> = { inertia: { holds: isMatrix, allowed: "three rows of three numbers" } };

function isMatrix(value: unknown): boolean {
  if (!Array.isArray(value) || value.length !== 3) return false;
  return value.every((row) => Array.isArray(row) && row.length === 3 && row.every(Number.isFinite));
}

/** Holes whose middles on the grid have this share of the largest one's room are grown too: the grid is coarse. */
const NEARLY_LARGEST = 0.95;

/** Cells by which the exact circle is larger than the grid's at most. */
const BAND_CELLS = 12;

/** Rounds of growing; a bore takes two to four. */
const MOST_ROUNDS = 50;

/** Share of a radius that is rounding. */
const ROUNDING = 1e-12;

/**
 * Finds the bore; undefined where no hole goes through along any of the axes.
 *
 * @throws AnnuletError `mesh-malformed`; as `requireOptions`
 *
 * @example
 * const { mesh } = await build(document, { detail: "draft" });
 * const bore = findBore(mesh);
 * console.log(bore?.diameter); // mm
 */
export function findBore(mesh: Mesh, options: BoreOptions = {}): Bore | undefined {
  // A measured mesh may be handed over whole: what else is in it is not asked for.
  const { inertia } = Object(options) as BoreOptions;
  requireOptions(typeof options === "object" && options !== null ? { inertia } : options, RULES);
  requireSound(mesh);
  const lone = inertia === undefined ? undefined : loneAxis(inertia);
  const axes = [...FILE_AXES, ...(lone === undefined ? [] : [lone])].map((axis) => acrossAxis(mesh, axis));
  let best: Shadow | undefined;
  for (const plane of axes.sort((one, other) => other.width - one.width)) {
    // A hole is narrower than the whole of its shadow.
    if (best !== undefined && plane.width / 2 <= reachOf(best)) break;
    const shadow: Shadow = { ...plane, ...findHollows(plane.points, mesh.triangles) };
    if (best === undefined || reachOf(shadow) > reachOf(best)) best = shadow;
  }
  if (best === undefined || reachOf(best) === 0) return undefined;
  const found = best;
  const { hollows, cell } = best;
  const circles = hollows
    .filter(({ reach }) => reach >= NEARLY_LARGEST * hollows[0].reach)
    .map(({ middle }) => growAmong(found, mesh, middle, cell));
  const { centre, radius } = circles.reduce((one, other) => (other.radius > one.radius ? other : one));
  const [u, v] = best.across;
  const through = [0, 1, 2].map((k) => centre[0] * u[k] + centre[1] * v[k]);
  return {
    axis: best.axis,
    through: [through[0], through[1], through[2]],
    diameter: 2 * radius,
    circumference: 2 * Math.PI * radius,
  };
}

/**
 * Grows a circle in a hole. Only a few of the edges hold it: those nearest to its start all round, and then, as long as
 * others reach into the circle that these allow, the deepest of those as well. A circle that no edge reaches into is the
 * largest, as it is for fewer edges already.
 */
function growAmong(shadow: Shadow, mesh: Mesh, start: Point2, cell: number): Circle {
  const edges = new ShadowEdges(shadow.points, mesh.triangles);
  let best: Circle = { centre: start, radius: edges.distancesFrom(start) };
  const most = best.radius + BAND_CELLS * cell;
  const holding = edges.nearestAllRound(most);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const { centre, radius } = growCircle(Float64Array.from(holding), best.centre, cell, most);
    const free = edges.distancesFrom(centre);
    if (free > best.radius) best = { centre, radius: free };
    if (free >= radius * (1 - ROUNDING)) break;
    holding.push(...edges.nearestAllRound(radius));
  }
  return best;
}

/** The mesh seen along an axis. */
interface Plane {
  readonly axis: Point3;
  /** Two directions straight across the axis. */
  readonly across: readonly [Point3, Point3];
  /** x, y of each vertex along them. */
  readonly points: Float64Array;
  /** The narrower of its two extents, mm. */
  readonly width: number;
}

type Shadow = Plane & Hollows;

function reachOf({ hollows }: Shadow): number {
  return hollows[0]?.reach ?? 0;
}

function acrossAxis({ positions }: Mesh, axis: Point3): Plane {
  const across = directionsAcross(axis);
  const [u, v] = across;
  const points = new Float64Array((2 * positions.length) / 3);
  const low = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const high = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0, at = 0; i < positions.length; i += 3, at += 2) {
    const [x, y, z] = [positions[i], positions[i + 1], positions[i + 2]];
    points[at] = u[0] * x + u[1] * y + u[2] * z;
    points[at + 1] = v[0] * x + v[1] * y + v[2] * z;
    for (let k = 0; k < 2; k++) {
      low[k] = Math.min(low[k], points[at + k]);
      high[k] = Math.max(high[k], points[at + k]);
    }
  }
  return { axis, across, points, width: Math.min(high[0] - low[0], high[1] - low[1]) };
}

/** For an axis of the file the other two, so that their coordinates stay as they are. */
function directionsAcross([x, y, z]: Point3): readonly [Point3, Point3] {
  if (z === 1) return [FILE_AXES[2], FILE_AXES[1]];
  if (y === 1) return [FILE_AXES[0], FILE_AXES[2]];
  if (x === 1) return [FILE_AXES[1], FILE_AXES[0]];
  const size = Math.hypot(x, y);
  const u: Point3 = size === 0 ? [1, 0, 0] : [-y / size, x / size, 0];
  return [u, [y * u[2] - z * u[1], z * u[0] - x * u[2], x * u[1] - y * u[0]]];
}
