/**
 * Rays through a solid: from a place on its surface straight in, to where they come out again.
 *
 * Places are spread evenly by area: every so many mm² of the surface, triangle after triangle, has one (systematic
 * sampling), at the points of the R2 sequence within its triangle (M. Roberts, The unreasonable effectiveness of
 * quasirandom sequences, 2018). No chance is involved: the same mesh gives the same rays.
 */
import { BackSide, BufferAttribute, BufferGeometry, Ray, Vector3 } from "three";
import { MeshBVH } from "three-mesh-bvh";
import type { Point3 } from "../base/math/point.js";
import type { Mesh } from "../mesh/mesh.js";
import { unitFaceNormal } from "../mesh/normals.js";
import { triangleAreas } from "../mesh/triangle-areas.js";

/** Metal between two faces of a solid. */
export interface Wall {
  /** mm, along the ray. */
  readonly thickness: number;
  /** Where the ray goes in, straight to the surface there, and where it comes out; mm. */
  readonly from: Point3;
  readonly to: Point3;
}

/** Triangles in a leaf of the tree: on a ring of 200 000 the tree and 20 000 rays took least time with so many. */
const LEAF = 24;

/** Rays start this far beneath the surface, mm, so that they do not meet the face that they start from. */
const BENEATH = 1e-7;

/** Irrational steps of the R2 sequence: powers of 1/g, g³ = g + 1. */
const R2 = [0.7548776662466927, 0.5698402909980532] as const;

/** The search for the thinnest place goes in steps from about as far as rays are apart on a ring down to this, mm. */
const FIRST_STEP = 0.1;
const LEAST_STEP = 5e-4;

/** A wall that is thinner by less than this is the same, mm: rounding. */
const LEAST_GAIN = 1e-9;

export class WallRays {
  readonly #mesh: Mesh;
  readonly #tree: MeshBVH;
  readonly #facing: number;
  readonly #ray = new Ray();
  readonly #point = new Vector3();

  /**
   * @param mesh a closed solid, counter-clockwise seen from outside
   * @param lean two faces that lean towards each other by more than this, radians, are an edge and not a wall
   */
  constructor(mesh: Mesh, lean: number) {
    const geometry = new BufferGeometry();
    geometry.setAttribute("position", new BufferAttribute(mesh.positions, 3));
    const triangles = mesh.triangles.slice();
    geometry.setIndex(new BufferAttribute(triangles, 1));
    // The tree puts the triangles in an order of its own: faster than through a list of indices.
    this.#tree = new MeshBVH(geometry, { maxLeafSize: LEAF });
    this.#mesh = { positions: mesh.positions, triangles };
    this.#facing = Math.cos(lean);
  }

  /** The walls at about `count` places of the surface. */
  sample(count: number): Wall[] {
    const areas = triangleAreas(this.#mesh);
    const step = areas.reduce((sum, area) => sum + area, 0) / count;
    const walls: Wall[] = [];
    let due = step / 2;
    let placed = 0;
    areas.forEach((area, t) => {
      due -= area;
      // Without any area there is no step to go on by.
      for (; due < 0 && step > 0; due += step) {
        placed++;
        const wall = this.#cast(this.#within(t, placed), t);
        if (wall !== undefined) walls.push(wall);
      }
    });
    return walls;
  }

  /**
   * The thinnest wall found from this one in steps over the surface, each half the one before, within `reach` mm of it.
   *
   * @param counts walls that do not are passed over; default all do
   */
  settle(wall: Wall, reach: number, counts: (wall: Wall) => boolean = () => true): Wall {
    let best = wall;
    const thinner = (found: Wall | undefined): found is Wall =>
      found !== undefined &&
      found.thickness < best.thickness - LEAST_GAIN &&
      distance(found.from, wall.from) <= reach &&
      counts(found);
    for (let step = FIRST_STEP; step >= LEAST_STEP; step /= 2) {
      for (let moved = true; moved; ) {
        moved = false;
        for (const [dx, dy, dz] of around(best)) {
          const [x, y, z] = best.from;
          const found = this.near([x + step * dx, y + step * dy, z + step * dz]);
          if (!thinner(found)) continue;
          best = found;
          moved = true;
        }
      }
    }
    return best;
  }

  /** The i-th place of the sequence on a triangle. */
  #within(t: number, i: number): Point3 {
    const { positions, triangles } = this.#mesh;
    const [a, b] = folded((i * R2[0]) % 1, (i * R2[1]) % 1);
    const [p, q, r] = [3 * triangles[3 * t], 3 * triangles[3 * t + 1], 3 * triangles[3 * t + 2]];
    const at = (k: number) => (1 - a - b) * positions[p + k] + a * positions[q + k] + b * positions[r + k];
    return [at(0), at(1), at(2)];
  }

  /** The wall at the surface's place nearest to another. */
  near(place: Point3): Wall | undefined {
    const near = this.#tree.closestPointToPoint(this.#point.set(...place));
    return near === null ? undefined : this.#cast(near.point.toArray(), near.faceIndex);
  }

  /** The wall where a ray comes out that goes straight in at a place on a triangle. */
  #cast(from: Point3, t: number): Wall | undefined {
    const [nx, ny, nz] = unitFaceNormal(this.#mesh, t);
    this.#ray.origin.set(from[0] - BENEATH * nx, from[1] - BENEATH * ny, from[2] - BENEATH * nz);
    this.#ray.direction.set(-nx, -ny, -nz);
    const hit = this.#tree.raycastFirst(this.#ray, BackSide);
    if (hit === null || typeof hit.faceIndex !== "number") return undefined;
    const [ox, oy, oz] = unitFaceNormal(this.#mesh, hit.faceIndex);
    if (-(nx * ox + ny * oy + nz * oz) < this.#facing) return undefined;
    return { thickness: hit.distance + BENEATH, from, to: hit.point.toArray() };
  }
}

/** mm from place to place. */
export function distance(a: Point3, b: Point3): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/** Two shares of a square as two shares of the triangle that is half of it. */
function folded(a: number, b: number): readonly [number, number] {
  return a + b > 1 ? [1 - a, 1 - b] : [a, b];
}

/** Below this share of its length a vector counts as upright. */
const UPRIGHT = 0.1;

/** Four unit vectors along the surface at a wall, at right angles to each other. */
function around({ from, to, thickness }: Wall): readonly Point3[] {
  const [x, y, z] = from.map((at, k) => (to[k] - at) / thickness);
  const flat = Math.hypot(x, y);
  const side: Point3 = flat > UPRIGHT ? [-y / flat, x / flat, 0] : [z / Math.hypot(x, z), 0, -x / Math.hypot(x, z)];
  const up: Point3 = [y * side[2] - z * side[1], z * side[0] - x * side[2], x * side[1] - y * side[0]];
  return [side, up, [-side[0], -side[1], -side[2]], [-up[0], -up[1], -up[2]]];
}
