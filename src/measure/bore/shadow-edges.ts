/**
 * The edges of a mesh's shadow, millions of them, seen from one place after another.
 */
import type { Point2 } from "../../base/math/point.js";

/** Directions that are told apart: a bore has fewer facets than this. */
const DIRECTIONS = 2048;

export class ShadowEdges {
  /** Where the nearest point of each edge lies, seen from the place asked last. */
  private readonly dx: Float64Array;
  private readonly dy: Float64Array;

  /**
   * @param points x, y of each vertex
   * @param triangles three vertices a triangle
   */
  constructor(
    private readonly points: Float64Array,
    private readonly triangles: Uint32Array,
  ) {
    this.dx = new Float64Array(triangles.length);
    this.dy = new Float64Array(triangles.length);
  }

  /** Looks from a place. Returns how far the nearest edge is. */
  distancesFrom([x, y]: Point2): number {
    const { points, triangles, dx, dy } = this;
    let least = Number.POSITIVE_INFINITY;
    for (let h = 0; h < triangles.length; h++) {
      const a = 2 * triangles[h];
      const b = 2 * triangles[h % 3 === 2 ? h - 2 : h + 1];
      const px = points[a] - x;
      const py = points[a + 1] - y;
      const ux = points[b] - points[a];
      const uy = points[b + 1] - points[a + 1];
      const square = ux * ux + uy * uy;
      const t = square === 0 ? 0 : Math.min(1, Math.max(0, -(px * ux + py * uy) / square));
      dx[h] = px + t * ux;
      dy[h] = py + t * uy;
      least = Math.min(least, dx[h] * dx[h] + dy[h] * dy[h]);
    }
    return Math.sqrt(least);
  }

  /** The nearest edge in every direction, seen from the place asked last, where it is nearer than `most`: x, y of both ends. */
  nearestAllRound(most: number): number[] {
    const { points, triangles, dx, dy } = this;
    const nearest = new Int32Array(DIRECTIONS).fill(-1);
    const squares = new Float64Array(DIRECTIONS).fill(most * most);
    for (let h = 0; h < triangles.length; h++) {
      const square = dx[h] * dx[h] + dy[h] * dy[h];
      if (square >= most * most) continue;
      const turn = Math.atan2(dy[h], dx[h]) / (2 * Math.PI) + 0.5;
      const direction = Math.min(DIRECTIONS - 1, Math.floor(turn * DIRECTIONS));
      if (square >= squares[direction]) continue;
      squares[direction] = square;
      nearest[direction] = h;
    }
    const edges: number[] = [];
    for (const h of nearest) {
      if (h === -1) continue;
      const a = 2 * triangles[h];
      const b = 2 * triangles[h % 3 === 2 ? h - 2 : h + 1];
      edges.push(points[a], points[a + 1], points[b], points[b + 1]);
    }
    return edges;
  }
}
