/**
 * Undersides that lean so far from the upright that a printer has nothing to lay them on.
 *
 * A face whose outward unit normal is n leans by asin(−n_z) from the upright: 0° a wall, 90° a level underside.
 */
import type { Point3 } from "../../base/math/point.js";
import { numberFrom, type OptionRules, requireOptions } from "../../base/options.js";
import { radians } from "../../base/units.js";
import { PRINT_DEFAULTS, PRINT_RANGES } from "../../design/print-settings.js";
import type { Mesh } from "../../mesh/mesh.js";
import { findRoot, singletons, unite } from "../../mesh/shells.js";
import { requireSound } from "../../mesh/sound.js";

const RULES: OptionRules<UndersideOptions> = { support: numberFrom(...PRINT_RANGES.support, "degrees") };

/** From where on an underside is steep. */
export interface UndersideOptions {
  /** Undersides that lean further from the upright than this are steep, degrees, 0 to 89. Default 45. */
  readonly support?: number | undefined;
}

/** Steep triangles that hang together by their corners. */
export interface UndersidePlace {
  /** Middle of its area, mm. */
  readonly at: Point3;
  /** mm² */
  readonly area: number;
  /** Height of its lowest point over the lowest of the mesh, mm. */
  readonly height: number;
}

/** The steep undersides of a mesh. */
export interface Undersides {
  /** mm² of steep undersides, and their share of the whole surface, 0 to 1. */
  readonly area: number;
  readonly share: number;
  /** mm² of what lies level on the plate and is carried by it; not counted above. */
  readonly resting: number;
  /** Every place, the largest first. */
  readonly places: readonly UndersidePlace[];
  /** One entry a triangle: 1 where it is steep. */
  readonly steep: Uint8Array;
}

/** Corners this near to the lowest point lie on the plate, mm: above float32's rounding, below any layer. */
const ON_PLATE = 1e-4;

/** A lean that differs from the limit by less is at the limit, as a sine: rounding of a float32 mesh. */
const AT_LIMIT = 1e-6;

/**
 * Finds the steep undersides of a mesh that is printed from z upwards. Triangles must share vertices to count as one place.
 *
 * @throws AnnuletError `mesh-malformed`; as `requireOptions`
 *
 * @example
 * const { mesh } = await build(document, { detail: "draft" });
 * const { area, places } = findUndersides(layDown(mesh, { stance: "standing", tilt: 0 }), { support: 45 });
 */
export function findUndersides(mesh: Mesh, options: UndersideOptions = {}): Undersides {
  requireOptions(options, RULES);
  requireSound(mesh);
  const { support = PRINT_DEFAULTS.support } = options;
  const lowest = lowestOf(mesh);
  const { whole, resting, area, steep, areas } = sortByLean(mesh, support, lowest);
  return { area, share: whole > 0 ? area / whole : 0, resting, places: placesOf(mesh, steep, areas, lowest), steep };
}

/** The lowest z of any vertex, mm. */
export function lowestOf({ positions: p }: Mesh): number {
  let lowest = Number.POSITIVE_INFINITY;
  for (let i = 2; i < p.length; i += 3) if (p[i] < lowest) lowest = p[i];
  return lowest;
}

/** The area of each triangle and of all, of what rests on the plate and of what is steep, mm², and which triangles are. */
export function sortByLean({ positions: p, triangles }: Mesh, support: number, lowest: number) {
  const limit = Math.sin(radians(support)) + AT_LIMIT;
  const steep = new Uint8Array(triangles.length / 3);
  const areas = new Float64Array(steep.length);
  let [whole, resting, area] = [0, 0, 0];
  for (let t = 0; t < steep.length; t++) {
    const a = 3 * triangles[3 * t];
    const b = 3 * triangles[3 * t + 1];
    const c = 3 * triangles[3 * t + 2];
    const ux = p[b] - p[a];
    const uy = p[b + 1] - p[a + 1];
    const uz = p[b + 2] - p[a + 2];
    const vx = p[c] - p[a];
    const vy = p[c + 1] - p[a + 1];
    const vz = p[c + 2] - p[a + 2];
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    areas[t] = length / 2;
    whole += areas[t];
    if (!(-nz > limit * length)) continue;
    if (Math.max(p[a + 2], p[b + 2], p[c + 2]) - lowest <= ON_PLATE) resting += areas[t];
    else {
      steep[t] = 1;
      area += areas[t];
    }
  }
  return { whole, resting, area, steep, areas };
}

function placesOf({ positions, triangles }: Mesh, steep: Uint8Array, areas: Float64Array, lowest: number) {
  const parent = singletons(positions.length / 3);
  for (let t = 0; t < steep.length; t++) {
    if (steep[t] === 0) continue;
    unite(parent, triangles[3 * t], triangles[3 * t + 1]);
    unite(parent, triangles[3 * t], triangles[3 * t + 2]);
  }
  const numberOf = new Int32Array(parent.length).fill(-1);
  const sums: PlaceSum[] = [];
  for (let t = 0; t < steep.length; t++) {
    if (steep[t] === 0) continue;
    const root = findRoot(parent, triangles[3 * t]);
    if (numberOf[root] === -1)
      numberOf[root] = sums.push({ area: 0, x: 0, y: 0, z: 0, low: Number.POSITIVE_INFINITY }) - 1;
    addTo(sums[numberOf[root]], areas[t], positions, triangles, t);
  }
  return sums
    .map(
      ({ area, x, y, z, low }): UndersidePlace => ({ at: [x / area, y / area, z / area], area, height: low - lowest }),
    )
    .sort((a, b) => b.area - a.area);
}

/** Area of a place, mm², its first moments, mm³, and its lowest z, mm. */
interface PlaceSum {
  area: number;
  x: number;
  y: number;
  z: number;
  low: number;
}

function addTo(sum: PlaceSum, area: number, positions: Float64Array, triangles: Uint32Array, t: number): void {
  sum.area += area;
  for (let corner = 3 * t; corner < 3 * t + 3; corner++) {
    const at = 3 * triangles[corner];
    sum.x += (area / 3) * positions[at];
    sum.y += (area / 3) * positions[at + 1];
    sum.z += (area / 3) * positions[at + 2];
    sum.low = Math.min(sum.low, positions[at + 2]);
  }
}
