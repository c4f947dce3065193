/**
 * Gathers many small bodies into few meshes of bodies that do not touch: a kernel then unites a handful of parts.
 */
import type { Point3 } from "../base/math/point.js";
import { PointGrid } from "../base/math/point-grid.js";
import { concatMeshes, type Mesh } from "../mesh/mesh.js";

/** Bodies nearer than this are held to touch, mm: as far as tidying may move points, so that rounding brings none together. */
const CLEARANCE = 2e-3;

/** A mesh of bodies is ended once it has as many triangles: a union with it takes a tenth of a second or so. */
const FULL = 16_000;

interface Sphere {
  readonly centre: Point3;
  readonly radius: number;
}

/** Each result mesh holds bodies whose bounding spheres are apart. The order of bodies decides, nothing else. */
export function groupDisjoint(bodies: readonly Mesh[]): Mesh[] {
  const spheres = bodies.map(boundingSphere);
  const widest = spheres.reduce((most, sphere) => Math.max(most, 2 * sphere.radius), 0);
  const grid = new PointGrid<number>(widest + CLEARANCE);
  const groupOf: number[] = [];
  let count = 0;
  spheres.forEach((sphere, i) => {
    const touching = grid.near(sphere.centre).filter((j) => touch(spheres[j], sphere));
    const taken = new Set(touching.map((j) => groupOf[j]));
    let group = 0;
    while (taken.has(group)) group++;
    groupOf[i] = group;
    count = Math.max(count, group + 1);
    grid.add(sphere.centre, i);
  });
  const groups: Mesh[][] = Array.from({ length: count }, () => []);
  bodies.forEach((body, i) => {
    groups[groupOf[i]].push(body);
  });
  return groups.flatMap(intoFull).map(concatMeshes);
}

/** Parts a list of bodies into lists that are just full. */
function intoFull(bodies: readonly Mesh[]): Mesh[][] {
  const lists: Mesh[][] = [];
  let triangles = FULL;
  for (const body of bodies) {
    if (triangles >= FULL) {
      lists.push([]);
      triangles = 0;
    }
    lists[lists.length - 1].push(body);
    triangles += body.triangles.length / 3;
  }
  return lists;
}

function boundingSphere({ positions }: Mesh): Sphere {
  const [low, high] = [[0, 1, 2].map((k) => positions[k]), [0, 1, 2].map((k) => positions[k])];
  for (let i = 0; i < positions.length; i++) {
    low[i % 3] = Math.min(low[i % 3], positions[i]);
    high[i % 3] = Math.max(high[i % 3], positions[i]);
  }
  const centre = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2] as const;
  let square = 0;
  for (let i = 0; i < positions.length; i += 3) {
    square = Math.max(
      square,
      (positions[i] - centre[0]) ** 2 + (positions[i + 1] - centre[1]) ** 2 + (positions[i + 2] - centre[2]) ** 2,
    );
  }
  return { centre, radius: Math.sqrt(square) };
}

function touch(a: Sphere, b: Sphere): boolean {
  const apart = Math.hypot(a.centre[0] - b.centre[0], a.centre[1] - b.centre[1], a.centre[2] - b.centre[2]);
  return apart < a.radius + b.radius + CLEARANCE;
}
