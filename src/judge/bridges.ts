/**
 * Bridges: places where a bead touches the rest in more than one place and so closes a handle over a gap.
 *
 * Where a ball meets a solid in one patch, what stays visible of it is a disc: one border, Euler characteristic 1.
 * A ball that also touches something across a gap shows a surface with one more hole, and the solid gains a handle.
 */
import type { Point3 } from "../base/math/point.js";
import { PointGrid } from "../base/math/point-grid.js";
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
  const ballsAt = findBallsAt(mesh, balls, reach);
  const faces = new Map<number, number[]>();
  for (let t = 0; t < mesh.triangles.length / 3; t++) {
    const [first, second, third] = [0, 1, 2].map((k) => ballsAt.get(mesh.triangles[3 * t + k]) ?? NONE);
    const ball = first.find((i) => second.includes(i) && third.includes(i));
    if (ball === undefined) continue;
    const list = faces.get(ball);
    if (list === undefined) faces.set(ball, [t]);
    else list.push(t);
  }
  return [...faces].filter(([, triangles]) => characteristic(mesh, triangles) < 1).map(([ball]) => balls[ball]);
}

const NONE: readonly number[] = [];

/** For each vertex the balls on whose surface it lies, lowest first; vertices that lie on none are left out. */
function findBallsAt({ positions }: Mesh, balls: readonly Ball[], reach: number): Map<number, number[]> {
  const vertices = new PointGrid<number>(balls.reduce((most, { radius }) => Math.max(most, radius), 0) + reach);
  for (let i = 0; i < positions.length; i += 3) {
    vertices.add([positions[i], positions[i + 1], positions[i + 2]], i / 3);
  }
  const found = new Map<number, number[]>();
  balls.forEach(({ centre, radius }, ball) => {
    for (const vertex of vertices.near(centre)) {
      const x = positions[3 * vertex] - centre[0];
      const y = positions[3 * vertex + 1] - centre[1];
      const z = positions[3 * vertex + 2] - centre[2];
      if (Math.abs(Math.sqrt(x * x + y * y + z * z) - radius) > reach) continue;
      const list = found.get(vertex);
      if (list === undefined) found.set(vertex, [ball]);
      else list.push(ball);
    }
  });
  return found;
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
