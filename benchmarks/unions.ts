/**
 * Unites the very same parts: by annulet's road, and by each kernel all of the ring at once, its beads put into classes
 * before the timing. The bodies of a unit are built before the timing like those of the whole ring.
 */

import type { BandSurface } from "../src/band/surface/surface.js";
import type { RoundSymmetry, Sector } from "../src/base/math/round.js";
import { finish } from "../src/base/pausing.js";
import { TURN } from "../src/base/units.js";
import type { Mesh } from "../src/mesh/mesh.js";
import { turnRound } from "../src/mesh/turn-round.js";
import type { Parts } from "../src/solids/parts.js";
import { symmetryOf } from "../src/solids/symmetry.js";
import { groupDisjoint } from "../src/union/groups.js";
import { bvhKernel } from "../src/union/kernels/bvh.js";
import { manifoldKernel } from "../src/union/kernels/manifold.js";
import { takeSteps } from "../src/union/take-steps.js";
import { tidyMesh } from "../src/union/tidy-mesh.js";
import { makeUnit } from "../src/union/unit.js";
import { bodiesOf } from "./bodies-of.js";
import { type Checksum, checksumOf } from "./checksum.js";
import type { Effort } from "./effort.js";
import { manifoldUnion } from "./manifold-union.js";
import { type Task, type Timing, timeTask } from "./time-task.js";
import { WANTED } from "./wanted.js";

export interface UnionTiming extends Timing {
  /** Number of meshes that were united. */
  readonly bodies: number;
  /** Of the result after tidying, which is not timed. */
  readonly checksum: Checksum;
  /** How many times faster than the reference it is to be on the README's design; undefined where nothing is asked. */
  readonly wanted?: number | undefined;
}

/** A ring's parts, with the surface that they stand on. */
export interface UnionParts extends Parts {
  readonly wrap: BandSurface;
}

interface UnionTask extends Task<Mesh> {
  readonly bodies: number;
  readonly wanted?: number;
}

/** What all other times are told as multiples of. */
export const REFERENCE = "manifold, merged classes";

/** three-bvh-csg is timed on rings of up to so many beads: on the design of 1 494 beads one call took 11 s (measured). */
export const BVH_MOST_BEADS = 600;

/** The reference comes first. */
export async function timeUnions(parts: UnionParts, effort: Effort): Promise<UnionTiming[]> {
  const solid = bodiesOf(parts, ["band", "relief"]);
  const beads = bodiesOf(parts, ["beads"]);
  const merged = [...solid, ...groupDisjoint(beads)];
  const single = [...solid, ...beads];
  const tasks: UnionTask[] = [
    { name: REFERENCE, bodies: merged.length, run: () => manifoldUnion(merged) },
    ...unitTasks(parts),
    { name: "manifold, bead by bead", bodies: single.length, run: () => manifoldUnion(single) },
  ];
  if (beads.length <= BVH_MOST_BEADS) {
    tasks.push({ name: "three-bvh-csg, merged classes", bodies: merged.length, run: () => bvhKernel.union(merged) });
  }
  const timings: UnionTiming[] = [];
  for (const task of tasks) {
    const { timing, result } = await timeTask(task, effort);
    timings.push({ ...timing, bodies: task.bodies, wanted: task.wanted, checksum: checksumOf(tidyMesh(result)) });
  }
  return timings;
}

/** One task for each road by a unit: what is enough of it united, tidied and repeated. */
function unitTasks(parts: UnionParts): UnionTask[] {
  const { symmetry } = parts;
  if (symmetry === undefined) return [];
  const mirrors = symmetry.mirrored ? symmetry.sectors : [];
  const turned = symmetry.mirrored ? withoutMirrors(parts, symmetry) : symmetry;
  return [
    ...mirrors.map((sector) => {
      const half = sector.upper === true ? "a quarter of a unit" : "half a unit";
      return unitTask(parts, { name: `annulet, mirror road, ${half}`, sector, symmetry, wanted: WANTED.mirrorRoad });
    }),
    ...(turned?.sectors.slice(0, 1) ?? []).map((sector) => {
      const road = { name: "annulet, turn road, a unit", wanted: WANTED.turnRoad };
      return unitTask(parts, { ...road, sector, symmetry: turned ?? symmetry });
    }),
  ];
}

interface UnitRoad {
  readonly name: string;
  readonly sector: Sector;
  readonly symmetry: RoundSymmetry;
  readonly wanted: number;
}

function unitTask(parts: Parts, { name, sector, symmetry, wanted }: UnitRoad): UnionTask {
  // Built before the timing, and remembered.
  const unit = bodiesOf(parts, ["band", "relief", "beads"], sector);
  return {
    name,
    wanted,
    bodies: unit.length,
    run: async () =>
      turnRound(
        finish(makeUnit(await takeSteps(manifoldKernel, parts.steps, { sector }), sector, symmetry)),
        symmetry.units,
      ),
  };
}

/** The same ring as if its mirrors were not known: a whole unit has to be united. */
function withoutMirrors({ steps, spheres, wrap }: UnionParts, { units }: RoundSymmetry) {
  const likeness = { units, mirrored: false, axis: 0, middle: false, beads: spheres };
  return symmetryOf(likeness, { wrap, facets: facetsOf(steps[0].bodies()[0]) });
}

/** Angles that differ by less are one, radians: rounding. */
const SAME_ANGLE = 1e-6;

/** Facets round a whole band: the different angles of its vertices. */
function facetsOf({ positions }: Mesh): number {
  const angles = Float64Array.from({ length: positions.length / 3 }, (_, i) =>
    Math.atan2(positions[3 * i + 1], positions[3 * i]),
  ).sort();
  const last = angles[angles.length - 1] - TURN;
  return angles.filter((angle, i) => angle - (i === 0 ? last : angles[i - 1]) > SAME_ANGLE).length;
}
