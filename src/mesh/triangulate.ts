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

/** Rounds of splitting after which a triangulation is given up: each round can only take the next vertex of an edge. */
const MAX_ROUNDS = 100;

function conform(points: readonly PlanePoint[], border: ReadonlySet<number>, triangles: number[]): number[] {
  const count = points.length;
  let current = triangles;
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const edges = new Set<number>();
    forEachEdge(current, (a, b) => edges.add(a * count + b));
    const loose = (a: number, b: number) => !border.has(a * count + b) && !edges.has(b * count + a);
    const next: number[] = [];
    let changed = false;
    for (let i = 0; i < current.length; i += 3) {
      const corner = [current[i], current[i + 1], current[i + 2]];
      const side = [0, 1, 2].find(
        (k) => loose(corner[k], corner[(k + 1) % 3]) && vertexOn(points, corner, k) !== undefined,
      );
      if (side === undefined) {
        next.push(...corner);
        continue;
      }
      changed = true;
      const [a, b, c] = [corner[side], corner[(side + 1) % 3], corner[(side + 2) % 3]];
      const m = vertexOn(points, corner, side) as number;
      next.push(a, m, c, m, b, c);
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

/** A vertex strictly inside side k of a triangle, the one nearest to the side's start. */
function vertexOn(points: readonly PlanePoint[], corner: readonly number[], k: number): number | undefined {
  const [a, b] = [points[corner[k]], points[corner[(k + 1) % 3]]];
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  let best: number | undefined;
  let nearest = 1 - ON_EDGE;
  for (let i = 0; i < points.length; i++) {
    const [px, py] = [points[i][0] - a[0], points[i][1] - a[1]];
    const t = (px * dx + py * dy) / square;
    if (t <= ON_EDGE || t >= nearest || Math.abs(px * dy - py * dx) > ON_EDGE * square) continue;
    [best, nearest] = [i, t];
  }
  return best;
}
