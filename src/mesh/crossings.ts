/**
 * Where the surface of a mesh crosses itself: pairs of triangles that meet elsewhere than at corners and sides which they
 * share. Told by exact predicates, so that what is found is so and nothing is missed; how deep is in plain arithmetic.
 */
import type { Point3 } from "../base/math/point.js";
import { Work } from "../base/work.js";
import { BoxTree, boxOf } from "./box-tree.js";
import { halveByMirrors } from "./halve-by-mirrors.js";
import type { Mesh } from "./mesh.js";
import { TrianglesMeet } from "./triangles-meet.js";

/** What was found. */
export interface Crossings {
  /** Pairs of triangles that cross, touch, or lie over each other. */
  readonly count: number;
  /** How far the deepest pair reach through each other's planes, mm; 0 where triangles only touch or lie over each other. */
  readonly deepest: number;
  /** Middles of the first triangle of the deepest pairs, up to ten, the deepest first; mm. */
  readonly places: readonly Point3[];
  /** Whether all was looked at; not where more pairs lie near each other than any surface has. */
  readonly complete: boolean;
}

export interface CrossingsOptions {
  /** Of how many turned images of its first triangles the mesh is made: the others need no look of their own. Default 1. */
  readonly units?: number;
  readonly signal?: AbortSignal | undefined;
}

/** Places that are told. */
const PLACES_SHOWN = 10;

/** Pairs looked at for each triangle, on the mean, before it is given up: rings have 7 to 20 (measured). */
const PAIRS_EACH = 1000;

/** Leaves of the tree, or triangles beside it, after which the clock is looked at: under a millisecond. */
const STEPS_AT_ONCE = 64;

/**
 * Looks at every pair of triangles whose boxes meet; the time grows with n log n on any surface. Where the triangles of a
 * unit are those of its first half and their mirror images, as is looked at and not taken on trust, pairs of images are
 * passed over.
 *
 * @param mesh sound: finite, indices in range
 * @throws the signal's reason
 */
export async function findCrossings(mesh: Mesh, { units = 1, signal }: CrossingsOptions = {}): Promise<Crossings> {
  const all = mesh.triangles.length / 3;
  const { first: looked, images } = halveByMirrors(mesh, all / units);
  const alike = units * images;
  const tree = new BoxTree(mesh, allOf(looked));
  const test = new TrianglesMeet(mesh);
  const deepest: { readonly depth: number; readonly t: number }[] = [];
  let [found, pairs] = [0, 0];
  const visit = (own: number, other: number) => {
    pairs++;
    if (!test.meet(own, other)) return;
    // A pair with an image is seen once more, from the other side, by images of its own.
    found += own >= looked || other >= looked ? 0.5 : 1;
    const depth = depthOf(mesh, own, other);
    if (deepest.length === PLACES_SHOWN && depth <= deepest[PLACES_SHOWN - 1].depth) return;
    deepest.push({ depth, t: own });
    deepest.sort((a, b) => b.depth - a.depth);
    deepest.length = Math.min(deepest.length, PLACES_SHOWN);
  };
  const beside = alike === 1 ? [] : besideFirst(mesh, looked);
  const box = new Float64Array(6);
  const steps = tree.leaves + beside.length;
  const pace = new Work(undefined, signal);
  await pace.rest();
  let step = 0;
  for (; step < steps && pairs <= PAIRS_EACH * looked; step++) {
    if (step % STEPS_AT_ONCE === 0) await pace.mayRest();
    if (step < tree.leaves) tree.pairsFrom(step, visit);
    else {
      const image = beside[step - tree.leaves];
      boxOf(mesh, image, box);
      tree.around(box, (own) => visit(own, image));
    }
  }
  return {
    count: found * alike,
    deepest: deepest[0]?.depth ?? 0,
    places: deepest.map(({ t }) => middleOf(mesh, t)),
    complete: step === steps,
  };
}

function allOf(count: number): Uint32Array {
  return Uint32Array.from({ length: count }, (_, t) => t);
}

/** All triangles but the first ones whose boxes meet the box round these. */
function besideFirst({ positions, triangles }: Mesh, first: number): Uint32Array {
  const low = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const high = low.map((x) => -x);
  for (let i = 0; i < 3 * first; i++) {
    for (let k = 0; k < 3; k++) {
      const x = positions[3 * triangles[i] + k];
      if (x < low[k]) low[k] = x;
      if (x > high[k]) high[k] = x;
    }
  }
  const apart = (i: number, k: number) => {
    const a = positions[3 * triangles[i] + k];
    const b = positions[3 * triangles[i + 1] + k];
    const c = positions[3 * triangles[i + 2] + k];
    return (a > high[k] && b > high[k] && c > high[k]) || (a < low[k] && b < low[k] && c < low[k]);
  };
  const near = new Uint32Array(triangles.length / 3 - first);
  let count = 0;
  for (let t = first; t < first + near.length; t++) {
    if (!(apart(3 * t, 0) || apart(3 * t, 1) || apart(3 * t, 2))) near[count++] = t;
  }
  return near.slice(0, count);
}

/** How far two triangles reach through each other's planes: the smaller of the two reaches, mm. */
export function depthOf(mesh: Mesh, s: number, t: number): number {
  return Math.min(reachOf(mesh, s, t), reachOf(mesh, t, s));
}

/** How far a triangle reaches to both sides of another's plane: the smaller of the two, mm. */
function reachOf(mesh: Mesh, s: number, t: number): number {
  const [origin, second, third] = cornersOf(mesh, t);
  const [u, v] = [second, third].map((corner) => corner.map((x, k) => x - origin[k]));
  const normal = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
  const length = Math.hypot(...normal) || 1;
  const heights = cornersOf(mesh, s).map(
    (corner) => corner.reduce((sum, x, k) => sum + (x - origin[k]) * normal[k], 0) / length,
  );
  return Math.min(Math.max(0, ...heights), Math.max(0, ...heights.map((height) => -height)));
}

function middleOf(mesh: Mesh, t: number): Point3 {
  const [a, b, c] = cornersOf(mesh, t);
  return [(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3, (a[2] + b[2] + c[2]) / 3];
}

function cornersOf({ positions, triangles }: Mesh, t: number): readonly [Point3, Point3, Point3] {
  const corner = (k: number): Point3 => {
    const at = 3 * triangles[3 * t + k];
    return [positions[at], positions[at + 1], positions[at + 2]];
  };
  return [corner(0), corner(1), corner(2)];
}
