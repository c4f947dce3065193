/**
 * Beads: spheres as geodesic polyhedra, set with their axes along the band, across it and outward.
 *
 * A geodesic sphere of frequency f divides each of the icosahedron's 20 faces into f² and pushes the vertices out to the
 * sphere (class I, any handbook of geodesic domes). It is its own mirror image in three planes at right angles, so a
 * mirrored bead is the same bead.
 */
import { vec3 } from "gl-matrix";
import type { Point3 } from "../base/math/point.js";
import type { Mesh } from "../mesh/mesh.js";
import { transformMesh } from "../mesh/transform.js";
import { weldMesh } from "../mesh/weld.js";

/** A bead in space. */
export interface Bead {
  /** mm */
  readonly centre: Point3;
  /** mm, above 0. */
  readonly radius: number;
  /** Outward unit normal of what carries it. */
  readonly outward: Point3;
}

/** Icosahedra finer than this would only serve beads larger than a finger. */
const MAX_FREQUENCY = 64;

/**
 * A unit sphere within `deviation` (a share of the radius) of the true one: its vertices stand out by as much as its
 * faces fall short, which halves the deviation of an inscribed one and keeps the volume nearly true.
 *
 * @param standsOut most by which vertices stand out all the same, as a share of the radius; default no less than that
 */
export function geodesicSphere(deviation: number, standsOut = deviation): Mesh {
  for (let frequency = 1; ; frequency++) {
    const { positions, triangles } = divideIcosahedron(frequency);
    const scale = 2 / (1 + leastFaceDistance({ positions, triangles }));
    if (scale - 1 <= deviation || frequency === MAX_FREQUENCY) {
      const least = Math.min(scale, 1 + standsOut);
      return { positions: positions.map((value) => value * least), triangles };
    }
  }
}

/** The bead's mesh from a unit sphere. */
export function beadMesh(bead: Bead, unit: Mesh): Mesh {
  const [ox, oy, oz] = bead.outward;
  const along = vec3.normalize([0, 0, 0], [-bead.centre[1], bead.centre[0], 0]);
  const across = vec3.cross([0, 0, 0], [ox, oy, oz], along);
  const r = bead.radius;
  const [x, y, z] = bead.centre;
  // biome-ignore format: a matrix by columns
  const matrix = [
    along[0] * r, along[1] * r, along[2] * r, 0,
    across[0] * r, across[1] * r, across[2] * r, 0,
    ox * r, oy * r, oz * r, 0,
    x, y, z, 1,
  ];
  return transformMesh(unit, matrix);
}

function divideIcosahedron(frequency: number): Mesh {
  const soup: number[] = [];
  for (const face of icosahedronFaces()) {
    const at = (i: number, j: number): number[] => {
      const [a, b, c] = [frequency - i - j, i, j];
      const point = [0, 1, 2].map((k) => (face[0][k] * a + face[1][k] * b + face[2][k] * c) / frequency);
      const length = Math.hypot(...point);
      return point.map((value) => value / length);
    };
    for (let i = 0; i < frequency; i++) {
      for (let j = 0; j < frequency - i; j++) {
        soup.push(...at(i, j), ...at(i + 1, j), ...at(i, j + 1));
        if (j < frequency - i - 1) soup.push(...at(i + 1, j), ...at(i + 1, j + 1), ...at(i, j + 1));
      }
    }
  }
  const triangles = Uint32Array.from({ length: soup.length / 3 }, (_, i) => i);
  return weldMesh({ positions: Float64Array.from(soup), triangles }, { tolerance: WELD });
}

/** Vertices of neighbouring faces differ by rounding alone; on a unit sphere no two others are this near. */
const WELD = 1e-9;

function icosahedronFaces(): Point3[][] {
  const g = (1 + Math.sqrt(5)) / 2;
  const corners: Point3[] = [];
  for (const s of [1, -1]) for (const t of [g, -g]) corners.push([0, s, t], [s, t, 0], [t, 0, s]);
  const faces: Point3[][] = [];
  const near = (a: Point3, b: Point3) => Math.abs(vec3.distance(a, b) - 2) < WELD;
  corners.forEach((a, i) => {
    corners.forEach((b, j) => {
      corners.forEach((c, k) => {
        if (i >= j || j >= k || !near(a, b) || !near(b, c) || !near(c, a)) return;
        faces.push(tripleProduct(a, b, c) > 0 ? [a, b, c] : [a, c, b]);
      });
    });
  });
  return faces;
}

function tripleProduct(a: Point3, b: Point3, c: Point3): number {
  return vec3.dot(vec3.cross([0, 0, 0], a, b), c);
}

/** Distance of the nearest face's plane from the centre. */
function leastFaceDistance({ positions, triangles }: Mesh): number {
  let least = 1;
  const point = (vertex: number): Point3 => [
    positions[3 * vertex],
    positions[3 * vertex + 1],
    positions[3 * vertex + 2],
  ];
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [point(triangles[i]), point(triangles[i + 1]), point(triangles[i + 2])];
    const normal = vec3.cross([0, 0, 0], vec3.subtract([0, 0, 0], b, a), vec3.subtract([0, 0, 0], c, a));
    least = Math.min(least, tripleProduct(a, b, c) / vec3.length(normal));
  }
  return least;
}
