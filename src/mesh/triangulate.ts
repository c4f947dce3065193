/**
 * Triangulation of polygons with holes by earcut, made conforming.
 *
 * Earcut leaves out vertices that lie exactly on a line with their neighbours, also where another triangle uses them.
 * So every edge that neither a neighbouring triangle nor the polygon's border shares is split at the vertices on it.
 * Then diagonals are swapped towards the Delaunay triangulation: a narrow strip between two contours gets triangles
 * across it, not along it, so that its surface follows both contours.
 */
import earcut, { refine } from "earcut";
import { AnnuletError } from "../base/errors.js";
import { turnOf } from "../base/math/turn-of.js";
import { fillTriangle } from "./fill-triangle.js";

/** A point whose first two coordinates lie in the plane of the triangulation; further ones are carried along. */
export type PlanePoint = readonly [number, number, ...number[]];

/**
 * Triangles of a polygon, as indices into its points ring after ring; counter-clockwise where the outer ring is.
 *
 * @param rings the outer ring counter-clockwise, then the holes clockwise; none closed by a repeated point
 * @throws AnnuletError `triangulation-failed` where the rings cross, so that no triangles cover the polygon
 */
export function triangulatePolygon(rings: readonly (readonly PlanePoint[])[]): number[] {
  const points = rings.flat();
  const holes: number[] = [];
  let count = 0;
  for (const ring of rings) {
    if (count > 0) holes.push(count);
    count += ring.length;
  }
  const coordinates = points.flatMap((point) => [point[0], point[1]]);
  const triangles = orient(points, earcut(coordinates, holes));
  const conforming = conform(points, ringEdges(rings, points.length), triangles);
  refine(conforming, coordinates);
  return conforming;
}

/** Earcut's winding follows its input in some versions and not in others: turn every triangle counter-clockwise. */
function orient(points: readonly PlanePoint[], triangles: readonly number[]): number[] {
  const turned: number[] = [];
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [triangles[i], triangles[i + 1], triangles[i + 2]];
    const [[ax, ay], [bx, by], [cx, cy]] = [points[a], points[b], points[c]];
    if (turnOf(ax, ay, bx, by, cx, cy) >= 0) turned.push(a, b, c);
    else turned.push(a, c, b);
  }
  return turned;
}

function ringEdges(rings: readonly (readonly PlanePoint[])[], count: number): Set<number> {
  const edges = new Set<number>();
  let start = 0;
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i++) edges.add((start + i) * count + start + ((i + 1) % ring.length));
    start += ring.length;
  }
  return edges;
}

/**
 * Rounds of splitting after which a triangulation is given up. A round takes all points of all sides; what it lays open
 * anew, where a triangle without area goes, is for the next.
 */
const MAX_ROUNDS = 100;

function conform(points: readonly PlanePoint[], border: ReadonlySet<number>, triangles: number[]): number[] {
  const count = points.length;
  const onSide = new PointsOnSides(points);
  let current = triangles;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const edges = new Set<number>();
    forEachEdge(current, (a, b) => edges.add(a * count + b));
    const loose = (a: number, b: number) => !border.has(a * count + b) && !edges.has(b * count + a);
    const next: number[] = [];
    let changed = false;
    for (let i = 0; i < current.length; i += 3) {
      const corners = [current[i], current[i + 1], current[i + 2]];
      const sides = corners.map((a, k) => {
        const b = corners[(k + 1) % 3];
        return loose(a, b) ? onSide.between(a, b) : [];
      });
      if (sides.every((side) => side.length === 0)) {
        next.push(...corners);
        continue;
      }
      changed = true;
      // One without area has a corner on a side: both parts of that side are left to its neighbours.
      const isFlat = sides.some((side, k) => side.includes(corners[(k + 2) % 3]));
      if (!isFlat) next.push(...fillTriangle(corners, sides));
    }
    if (!changed) return requireCover(current, border, edges, loose);
    current = next;
  }
  throw failed();
}

function requireCover(
  triangles: number[],
  border: ReadonlySet<number>,
  edges: ReadonlySet<number>,
  loose: (a: number, b: number) => boolean,
): number[] {
  for (const edge of border) if (!edges.has(edge)) throw failed();
  forEachEdge(triangles, (a, b) => {
    if (loose(a, b)) throw failed();
  });
  return triangles;
}

function failed(): AnnuletError {
  return new AnnuletError({
    code: "triangulation-failed",
    message: "a flat part of the relief could not be covered by triangles: its outlines touch or cross",
    hint: "move parts of the motif that only just touch apart, or let them overlap clearly",
  });
}

function forEachEdge(triangles: readonly number[], visit: (a: number, b: number) => void): void {
  for (let i = 0; i < triangles.length; i += 3) {
    visit(triangles[i], triangles[i + 1]);
    visit(triangles[i + 1], triangles[i + 2]);
    visit(triangles[i + 2], triangles[i]);
  }
}

/** Distance from a line, as a share of its length, within which a vertex lies on it. */
const ON_EDGE = 1e-9;

/** Finds the points of a polygon that lie on the sides of its triangles. */
class PointsOnSides {
  readonly #points: readonly PlanePoint[];
  /** The points by their first coordinate, and by their second. */
  readonly #sorted: readonly (readonly number[])[];

  constructor(points: readonly PlanePoint[]) {
    this.#points = points;
    this.#sorted = [0, 1].map((k) => Array.from(points.keys()).sort((i, j) => points[i][k] - points[j][k]));
  }

  /** The points strictly between two of them, on the line from the one to the other, in its order. */
  between(from: number, to: number): number[] {
    const [a, b] = [this.#points[from], this.#points[to]];
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const square = dx * dx + dy * dy;
    const axis = Math.abs(dx) >= Math.abs(dy) ? 0 : 1;
    const sorted = this.#sorted[axis];
    const [low, high] = [Math.min(a[axis], b[axis]), Math.max(a[axis], b[axis])];
    const found: [t: number, point: number][] = [];
    for (let i = this.#firstFrom(axis, low); i < sorted.length && this.#points[sorted[i]][axis] <= high; i++) {
      const point = this.#points[sorted[i]];
      const [px, py] = [point[0] - a[0], point[1] - a[1]];
      const t = (px * dx + py * dy) / square;
      if (t > ON_EDGE && t < 1 - ON_EDGE && Math.abs(px * dy - py * dx) <= ON_EDGE * square) found.push([t, sorted[i]]);
    }
    return distinct(found.sort((p, q) => p[0] - q[0] || p[1] - q[1]));
  }

  /** The place of the first point in the order that does not lie before a value. */
  #firstFrom(axis: number, value: number): number {
    const sorted = this.#sorted[axis];
    let [low, high] = [0, sorted.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.#points[sorted[middle]][axis] < value) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

/** Of points in order along a side those that lie apart; of two in one place the first by number. */
function distinct(points: readonly (readonly [t: number, point: number])[]): number[] {
  return points.filter(([t], i) => i === 0 || t - points[i - 1][0] > ON_EDGE).map(([, point]) => point);
}
