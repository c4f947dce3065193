/**
 * Works steps by a kernel, in order. Steps that add are united at one time, with what is cut next or at the end.
 */
import type { Sector } from "../base/math/round.js";
import { BREATH, finish, type Pausing } from "../base/pausing.js";
import type { Work } from "../base/work.js";
import type { Mesh } from "../mesh/mesh.js";
import type { Step } from "../mesh/step.js";
import { groupDisjoint } from "./groups.js";
import type { Kernel } from "./kernels/kernel.js";

export interface StepsOptions {
  /** What the steps begin with. Default nothing: then the first step adds one body. */
  readonly onto?: Mesh;
  /** The sector of the round that matters. Default the whole of it. */
  readonly sector?: Sector | undefined;
  /** Is called for each step whose bodies are made, so that progress can be told. Default: nobody is told. */
  readonly onStep?: (() => void) | undefined;
  /** Gives way while bodies are made. Default: they are made at once. */
  readonly pace?: Work | undefined;
}

/** The solid that the steps make. */
export async function takeSteps(
  by: Kernel,
  steps: readonly Step[],
  { onto, sector, onStep, pace }: StepsOptions = {},
): Promise<Mesh> {
  let added: Mesh[] = onto === undefined ? [] : [onto];
  for (const step of steps) {
    const making = makingBodies(step, sector);
    const bodies = await clearedBodies(by, pace === undefined ? finish(making) : await pace.through(making), step);
    onStep?.();
    if (step.op === "add") {
      const groups = step.small ? groupDisjoint(bodies) : bodies;
      added.push(...(step.gathered === true && groups.length > 1 ? [await by.union(groups)] : groups));
      continue;
    }
    const solid = await uniteAll(by, added);
    added = [bodies.length === 0 ? solid : await by.subtract(solid, await uniteAll(by, bodies))];
  }
  return uniteAll(by, added);
}

/** All bodies of a step, or those of a sector, in pieces where it can make them so. */
export function* makingBodies(step: Step, sector?: Sector): Pausing<readonly Mesh[]> {
  if (step.making !== undefined) return yield* step.making(sector);
  yield BREATH;
  return step.bodies(sector);
}

/** What is left of a step's bodies without what they keep clear of. */
async function clearedBodies(
  by: Kernel,
  bodies: readonly Mesh[],
  step: Pick<Step, "keepClear">,
): Promise<readonly Mesh[]> {
  if (step.keepClear === undefined || bodies.length === 0) return bodies;
  const left = await by.subtract(await uniteAll(by, bodies), step.keepClear);
  return left.triangles.length === 0 ? [] : [left];
}

/** One body needs no union. */
function uniteAll(by: Kernel, bodies: readonly Mesh[]): Promise<Mesh> {
  if (bodies.length === 0) throw new Error("a solid begins with a body");
  return bodies.length === 1 ? Promise.resolve(bodies[0]) : by.union(bodies);
}
