/**
 * The meshes of beads: all of them, or those that reach into a sector.
 */
import type { Sector } from "../base/math/round.js";
import { TURN } from "../base/units.js";
import type { Mesh } from "../mesh/mesh.js";
import { type Bead, beadMesh, geodesicSphere } from "./bead.js";
import { SIX_SIDED_DEVIATION, sixSidedBead } from "./six-sided-bead.js";

/**
 * Most by which a bead's mesh stands out beyond its sphere, as a share of its radius: at the default pitch of 1.05
 * neighbours keep a tenth of the radius between them, which two meshes that stand out must not close.
 */
const STANDS_OUT = 0.04;

export interface BeadBodiesOptions {
  /** Largest chordal deviation, mm. */
  readonly tolerance: number;
  /** Largest deviation as a share of the radius. */
  readonly coarsest: number;
  /** Default the whole round. */
  readonly sector?: Sector | undefined;
}

export function buildBeads(beads: readonly Bead[], { tolerance, coarsest, sector }: BeadBodiesOptions): Mesh[] {
  const spheres = new Map<number, Mesh>();
  const unit = (radius: number) => {
    const known = spheres.get(radius) ?? unitBead(Math.min(tolerance / radius, coarsest));
    spheres.set(radius, known);
    return known;
  };
  const own = sector === undefined ? beads : beads.filter((bead) => reaches(bead, sector));
  return own.map((bead) => beadMesh(bead, unit(bead.radius)));
}

/** @param deviation share of the radius */
function unitBead(deviation: number): Mesh {
  return deviation < SIX_SIDED_DEVIATION ? geodesicSphere(deviation, STANDS_OUT) : sixSidedBead();
}

/** Whether a bead reaches into a sector. */
function reaches({ centre: [x, y, z], radius }: Bead, { from, to, upper = false }: Sector): boolean {
  const reach = radius * (1 + STANDS_OUT);
  if (upper && z < -reach) return false;
  const beside = Math.asin(Math.min(1, reach / Math.hypot(x, y)));
  const angle = Math.atan2(y, x) - (from - beside);
  return angle - TURN * Math.floor(angle / TURN) <= to - from + 2 * beside;
}
