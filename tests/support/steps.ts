/** Steps from bodies, and bodies from steps, for tests of a ring's parts. */
import type { Sector } from "../../src/base/math/round.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import type { Step } from "../../src/mesh/step.js";

/** The bodies of a ring, or of a sector of one. */
export interface StepBodies {
  readonly band: Mesh;
  /** What is cut out, in order, before the rest is united. */
  readonly cuts: readonly { readonly under: readonly Mesh[]; readonly tools: readonly Mesh[] }[];
  /** Raised bodies that no cut goes through. */
  readonly reliefs: readonly Mesh[];
  readonly beads: readonly Mesh[];
  /** What marks cut out, and what they lay on. */
  readonly marks: Readonly<Record<Step["op"], readonly Mesh[]>>;
}

/** What a list of steps is made of. */
export function bodiesOfSteps(steps: readonly Step[], sector?: Sector): StepBodies {
  const cuts: { readonly under: readonly Mesh[]; readonly tools: readonly Mesh[] }[] = [];
  let reliefs: readonly Mesh[] = [];
  for (const { name, op, bodies } of steps) {
    if (op === "add" && name === "relief") reliefs = bodies(sector);
    if (op === "cut" && name === "cuts") {
      cuts.push({ under: reliefs, tools: bodies(sector) });
      reliefs = [];
    }
  }
  const of = (test: (step: Step) => boolean) => steps.filter(test).flatMap(({ bodies }) => bodies(sector));
  const placed = (op: Step["op"]) => of((step) => step.scope === "place" && step.op === op);
  return {
    band: steps[0].bodies(sector)[0],
    cuts,
    reliefs,
    beads: of(({ name }) => name === "beads"),
    marks: { add: placed("add"), cut: placed("cut") },
  };
}

/** A step of bodies that are there already and come again as the ring does. */
export function unitStep(op: Step["op"], bodies: readonly Mesh[], small = false): Step {
  return { name: op, op, bodies: () => bodies, scope: "unit", keepClear: undefined, small };
}
