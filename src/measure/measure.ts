/**
 * Volume, area, centroid and inertia of a closed mesh, by summing signed tetrahedra from one point to every triangle.
 *
 * A tetrahedron with corners 0, a, b, c has volume V = a · (b × c) / 6, centroid (a + b + c) / 4 and second moments
 * ∫ x xᵀ = V / 20 · (a aᵀ + b bᵀ + c cᵀ + s sᵀ) with s = a + b + c (F. Tonon, Explicit exact formulas for the 3-D
 * tetrahedron inertia tensor, 2005). The point is the middle of the mesh's box, so that a mesh far from the origin
 * loses no digits; moments move to the centroid by the parallel-axis theorem.
 */
import { AnnuletError } from "../base/errors.js";
import type { Point3 } from "../base/math/point.js";
import { type Bounds, boundsCentre, meshBounds } from "../mesh/bounds.js";
import type { Mesh } from "../mesh/mesh.js";
import { requireSound } from "../mesh/sound.js";
import { firstUnit, type Turned } from "../mesh/turned.js";

/** Figures of a closed mesh. */
export interface Measure {
  /** Signed, mm³: positive when the mesh faces outward. */
  readonly volume: number;
  /** Of all triangles, mm². */
  readonly area: number;
  /** Of the volume, mm. */
  readonly centroid: Point3;
  readonly bounds: Bounds;
  /** About the centroid for density 1, mm⁵, rows x, y, z. Times g/mm³ it is the moment of inertia in g mm². */
  readonly inertia: readonly [Point3, Point3, Point3];
}

/** Below this share of its box's volume the rest of a sum of cancelling tetrahedra is rounding, not volume. */
const ROUNDING_SHARE = 1e-12;

/**
 * Measures a closed mesh. Of a mesh that is not closed, only area and bounds mean something: ask the gate first.
 *
 * @throws AnnuletError `mesh-malformed`, or `mesh-without-volume` when it is empty or flat, so that it has no centroid
 *
 * @example
 * const { mesh } = await build(document, { detail: "draft" });
 * const { volume, area, bounds } = measureMesh(mesh); // mm³, mm², mm
 */
export function measureMesh(mesh: Mesh): Measure {
  requireSound(mesh);
  const bounds = meshBounds(mesh);
  const origin = boundsCentre(bounds);
  return figuresOf(sumTetrahedra(mesh, origin), bounds, origin);
}

/**
 * Measures a closed mesh that is one unit and its turned images, in the unit: from a point of the axis every image adds as
 * much, and what leans to one side adds up to nothing.
 *
 * @throws AnnuletError as `measureMesh`
 */
export function measureTurned(turned: Turned): Measure {
  const { mesh, units } = turned;
  const bounds = meshBounds(mesh);
  const origin: Point3 = [0, 0, boundsCentre(bounds)[2]];
  const { volume, area, first, second } = sumTetrahedra(firstUnit(turned), origin);
  // Half a turn leaves the moments in its plane as they are; three turns and more make them the same in all directions of it.
  const mean = (second[0] + second[1]) / 2;
  const [xx, yy, xy] = units === 2 ? [second[0], second[1], second[3]] : [mean, mean, 0];
  const sums = {
    volume: units * volume,
    area: units * area,
    first: [0, 0, units * first[2]],
    second: [xx, yy, second[2], xy, 0, 0].map((moment) => units * moment),
  };
  return figuresOf(sums, bounds, origin);
}

/** Volume, mm³, area, mm², first moments x, y, z, mm⁴, and second moments xx, yy, zz, xy, yz, zx, mm⁵, about one point. */
interface Sums {
  readonly volume: number;
  readonly area: number;
  readonly first: ArrayLike<number>;
  readonly second: ArrayLike<number>;
}

/** @throws AnnuletError `mesh-without-volume` */
function figuresOf({ volume, area, first, second }: Sums, bounds: Bounds, origin: Point3): Measure {
  const box = (bounds.max[0] - bounds.min[0]) * (bounds.max[1] - bounds.min[1]) * (bounds.max[2] - bounds.min[2]);
  if (area === 0 || Math.abs(volume) <= ROUNDING_SHARE * box) {
    throw new AnnuletError({
      code: "mesh-without-volume",
      message: "the mesh encloses no volume, so it has no centroid and no inertia",
      value: volume,
      hint: "check that it is closed and that its pieces face the same way",
    });
  }
  const [x, y, z] = [first[0] / volume, first[1] / volume, first[2] / volume];
  const xx = second[0] - volume * x * x;
  const yy = second[1] - volume * y * y;
  const zz = second[2] - volume * z * z;
  const xy = volume * x * y - second[3];
  const yz = volume * y * z - second[4];
  const zx = volume * z * x - second[5];
  return {
    volume,
    area,
    centroid: [origin[0] + x, origin[1] + y, origin[2] + z],
    bounds,
    inertia: [
      [yy + zz, xy, zx],
      [xy, zz + xx, yz],
      [zx, yz, xx + yy],
    ],
  };
}

/** Sum of the triangles' areas, mm². */
export function surfaceArea(mesh: Mesh): number {
  requireSound(mesh);
  return sumTetrahedra(mesh, boundsCentre(meshBounds(mesh))).area;
}

/** Sums over the triangles, about `origin`. */
function sumTetrahedra({ positions: p, triangles }: Mesh, [ox, oy, oz]: Point3): Sums {
  let volume = 0;
  let area = 0;
  const first = new Float64Array(3);
  const second = new Float64Array(6);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t];
    const b = 3 * triangles[t + 1];
    const c = 3 * triangles[t + 2];
    const ax = p[a] - ox;
    const ay = p[a + 1] - oy;
    const az = p[a + 2] - oz;
    const bx = p[b] - ox;
    const by = p[b + 1] - oy;
    const bz = p[b + 2] - oz;
    const cx = p[c] - ox;
    const cy = p[c + 1] - oy;
    const cz = p[c + 2] - oz;
    const ux = bx - ax;
    const uy = by - ay;
    const uz = bz - az;
    const vx = cx - ax;
    const vy = cy - ay;
    const vz = cz - az;
    area += Math.sqrt((uy * vz - uz * vy) ** 2 + (uz * vx - ux * vz) ** 2 + (ux * vy - uy * vx) ** 2) / 2;
    const part = (ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6;
    const sx = ax + bx + cx;
    const sy = ay + by + cy;
    const sz = az + bz + cz;
    volume += part;
    first[0] += (part * sx) / 4;
    first[1] += (part * sy) / 4;
    first[2] += (part * sz) / 4;
    const twentieth = part / 20;
    second[0] += twentieth * (ax * ax + bx * bx + cx * cx + sx * sx);
    second[1] += twentieth * (ay * ay + by * by + cy * cy + sy * sy);
    second[2] += twentieth * (az * az + bz * bz + cz * cz + sz * sz);
    second[3] += twentieth * (ax * ay + bx * by + cx * cy + sx * sy);
    second[4] += twentieth * (ay * az + by * bz + cy * cz + sy * sz);
    second[5] += twentieth * (az * ax + bz * bx + cz * cx + sz * sx);
  }
  return { volume, area, first, second };
}
