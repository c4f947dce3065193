/**
 * Every example's union against one union of its whole ring. Ours is all that is needed for it: how the ring comes again, the
 * bodies of a unit, cutting, uniting, tidying, copying and the gate. Of the reference only the library's own work is timed.
 */
import { finish } from "../src/base/pausing.js";
import { checkSolid } from "../src/judge/gate.js";
import type { Mesh } from "../src/mesh/mesh.js";
import { openInside } from "../src/ring/open-ring.js";
import { makeParts } from "../src/solids/parts.js";
import { manifoldKernel } from "../src/union/kernels/manifold.js";
import { uniteRing } from "../src/union/union.js";
import { type Effort, QUICK } from "./effort.js";
import { exampleDesigns } from "./example-designs.js";
import { makeSteps, manifoldSteps } from "./manifold-steps.js";
import { type Timing, timeTask } from "./time-task.js";

export interface ExampleRow {
  readonly name: string;
  readonly road: string;
  /** Why this road. */
  readonly reason: string;
  readonly beads: number;
  readonly triangles: number;
  readonly own: Timing;
  readonly reference: Timing;
}

const check = (mesh: Mesh) => checkSolid(mesh);

/** @param part of the examples' names; the empty string for all of them */
export async function timeExamples(effort: Effort, part: string): Promise<ExampleRow[]> {
  const rows: ExampleRow[] = [];
  for (const { name, document, files } of exampleDesigns(part)) {
    process.stderr.write(`${name}\n`);
    const names = ["profile", "pattern", "wrap", "marks", "beads"] as const;
    const ring = openInside(document, { files });
    const { answers } = await ring.ask(names);
    const { beads: placed, ...laid } = answers;
    const { tolerance, beads: beadRuns } = await ring.design();
    const make = () => finish(makeParts({ ...laid, placed, tolerance, beadRuns, warn: () => undefined }));
    const { steps, spheres } = make();
    const whole = makeSteps(steps);
    const unite = () => uniteRing(make(), { kernel: manifoldKernel, fallback: manifoldKernel, check });
    const { timing: own, result } = await timeTask({ name: "annulet", run: unite }, effort);
    const reference = await timeTask({ name: "manifold, whole ring", run: () => manifoldSteps(whole) }, QUICK);
    const { road, roadReason: reason, mesh } = result;
    const triangles = mesh.triangles.length / 3;
    rows.push({ name, road, reason, beads: spheres.length, triangles, own, reference: reference.timing });
  }
  return rows;
}
