/**
 * Unites the very same parts: by annulet's road, and by each kernel all of the ring at once, its beads put into classes
 * before the timing. The bodies of a unit are built before the timing like those of the whole ring.
 */
import type { Mesh } from "../src/mesh/mesh.js";
import { turnRound } from "../src/mesh/turn-round.js";
import type { Bodies, Parts } from "../src/solids/parts.js";
import { uniteBodies } from "../src/union/bodies.js";
import { groupDisjoint } from "../src/union/groups.js";
import { bvhKernel } from "../src/union/kernels/bvh.js";
import { manifoldKernel } from "../src/union/kernels/manifold.js";
import { tidyMesh } from "../src/union/tidy.js";
import { makeUnit } from "../src/union/unit.js";
import { type Checksum, checksumOf } from "./checksum.js";
import type { Effort } from "./effort.js";
import { manifoldUnion } from "./manifold-union.js";
import { type Task, type Timing, timeTask } from "./time-task.js";

export interface UnionTiming extends Timing {
  /** Number of meshes that were united. */
  readonly bodies: number;
  /** Of the result after tidying, which is not timed. */
  readonly checksum: Checksum;
}

/** What all other times are told as multiples of. */
export const REFERENCE = "manifold, merged classes";

/** three-bvh-csg is timed on rings of up to so many beads: on the design of 1 494 beads one call took 11 s (measured). */
export const BVH_MOST_BEADS = 600;

/** The reference comes first. */
export async function timeUnions(parts: Parts & Bodies, effort: Effort): Promise<UnionTiming[]> {
  const solid = [parts.band, ...parts.reliefs];
  const merged = [...solid, ...groupDisjoint(parts.beads)];
  const single = [...solid, ...parts.beads];
  const tasks: (Task<Mesh> & { readonly bodies: number })[] = [
    { name: REFERENCE, bodies: merged.length, run: () => manifoldUnion(merged) },
    ...unitTasks(parts),
    { name: "manifold, bead by bead", bodies: single.length, run: () => manifoldUnion(single) },
  ];
  if (parts.beads.length <= BVH_MOST_BEADS) {
    tasks.push({ name: "three-bvh-csg, merged classes", bodies: merged.length, run: () => bvhKernel.union(merged) });
  }
  const timings: UnionTiming[] = [];
  for (const task of tasks) {
    const { timing, result } = await timeTask(task, effort);
    timings.push({ ...timing, bodies: task.bodies, checksum: checksumOf(tidyMesh(result)) });
  }
  return timings;
}

/** One task for each stretch that is enough: united, tidied and repeated. */
function unitTasks({ bodies, symmetry }: Parts): (Task<Mesh> & { readonly bodies: number })[] {
  if (symmetry === undefined) return [];
  const { mirrored, stretches } = symmetry;
  return stretches.slice(0, mirrored ? 2 : 1).map((stretch) => {
    const unit = bodies(stretch);
    const half = stretch.upper === true ? "a quarter of a unit" : "half a unit";
    return {
      name: `annulet, ${mirrored ? `mirror road, ${half}` : "turn road"}`,
      bodies: 1 + unit.reliefs.length + unit.beads.length,
      run: async () => turnRound(makeUnit(await uniteBodies(manifoldKernel, unit), stretch, symmetry), symmetry.units),
    };
  });
}
