/**
 * Bridges: places where a bead touches the rest in more than one place and so closes a handle over a gap.
 *
 * Where a ball meets a solid in one patch, what stays visible of it is a disc: one border, Euler characteristic 1.
 * A ball that also touches something across a gap shows a surface with one more hole, and the solid gains a handle.
 */
import type { Point3 } from "../math/point.js";
import { PointGrid } from "../math/point-grid.js";
import type { Mesh } from "../mesh/mesh.js";

/** A ball that was united into the solid. */
export interface Ball {
  readonly centre: Point3;
  /** mm */
  readonly radius: number;
}

/**
 * The balls whose visible surface is not a disc.
 *
 * @param reach how far the mesh may lie from the true sphere, mm
 */
export function findBridges(mesh: Mesh, balls: readonly Ball[], reach: number): Ball[] {
  const owner = assignTriangles(mesh, balls, reach);
  const faces = new Map<number, number[]>();
  owner.forEach((ball, triangle) => {
    if (ball < 0) return;
    const list = faces.get(ball);
    if (list === undefined) faces.set(ball, [triangle]);
    else list.push(triangle);
  });
  return [...faces].filter(([, triangles]) => characteristic(mesh, triangles) < 1).map(([ball]) => balls[ball]);
}

/** For each triangle the ball on whose surface all its corners lie, −1 where there is none. */
function assignTriangles({ positions, triangles }: Mesh, balls: readonly Ball[], reach: number): Int32Array {
  const grid = new PointGrid<number>(balls.reduce((most, ball) => Math.max(most, ball.radius), 0) + reach);
  balls.forEach(({ centre }, i) => {
    grid.add(centre, i);
  });
  const onBall = (vertex: number, { centre, radius }: Ball) => {
    const [x, y, z] = [0, 1, 2].map((k) => positions[3 * vertex + k] - centre[k]);
    return Math.abs(Math.hypot(x, y, z) - radius) <= reach;
  };
  return Int32Array.from({ length: triangles.length / 3 }, (_, t) => {
    const corners = triangles.subarray(3 * t, 3 * t + 3);
    const [x, y, z] = positions.subarray(3 * corners[0], 3 * corners[0] + 3);
    return grid.near([x, y, z]).find((ball) => corners.every((vertex) => onBall(vertex, balls[ball]))) ?? -1;
  });
}

/** V − E + F of some triangles of a mesh. */
function characteristic({ triangles, positions }: Mesh, faces: readonly number[]): number {
  const vertices = new Set<number>();
  const edges = new Set<number>();
  const count = positions.length / 3;
  for (const face of faces) {
    for (let k = 0; k < 3; k++) {
      const [a, b] = [triangles[3 * face + k], triangles[3 * face + ((k + 1) % 3)]];
      vertices.add(a);
      edges.add(Math.min(a, b) * count + Math.max(a, b));
    }
  }
  return vertices.size - edges.size + faces.length;
}
