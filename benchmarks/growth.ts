/**
 * How the union grows with what it unites. The README's design, first with ever more beads in the same number of units,
 * then with ever more units of the same tile on a larger ring. A unit's union, with what makes it one of a ring, and its
 * copies are timed apart.
 */
import { finish } from "../src/base/pausing.js";
import { turnRound } from "../src/mesh/turn-round.js";
import { manifoldKernel } from "../src/union/kernels/manifold.js";
import { takeSteps } from "../src/union/take-steps.js";
import { makeUnit } from "../src/union/unit.js";
import { bodiesOf } from "./bodies-of.js";
import { type Checksum, checksumOf } from "./checksum.js";
import { beadier, larger, type TimedDesign } from "./designs.js";
import { atLeastFew, type Effort } from "./effort.js";
import { partsOf } from "./parts-of.js";
import { type Timing, timeTask } from "./time-task.js";

export interface GrowthRow {
  readonly name: string;
  readonly units: number;
  /** Beads of the ring, and of what of a unit is united. */
  readonly beads: number;
  readonly unitBeads: number;
  readonly unite: Timing;
  readonly copy: Timing;
  /** Of the ring. */
  readonly checksum: Checksum;
}

export interface Growth {
  readonly byBeads: readonly GrowthRow[];
  readonly byUnits: readonly GrowthRow[];
}

export async function timeGrowth(effort: Effort): Promise<Growth> {
  process.stderr.write("growth\n");
  const byBeads: GrowthRow[] = [];
  for (const design of beadier) byBeads.push(await timeOne(design, effort));
  const byUnits: GrowthRow[] = [];
  for (const design of larger) byUnits.push(await timeOne(design, effort));
  return { byBeads, byUnits };
}

async function timeOne({ name, document }: TimedDesign, effort: Effort): Promise<GrowthRow> {
  const parts = await partsOf(document);
  const { symmetry, spheres } = parts;
  if (symmetry === undefined) throw new Error(`${name} does not come again`);
  const [sector] = symmetry.sectors;
  const unitBeads = bodiesOf(parts, ["beads"], sector).length;
  const { units } = symmetry;
  const uniting = {
    name: `${name}, a unit`,
    run: async () => finish(makeUnit(await takeSteps(manifoldKernel, parts.steps, { sector }), sector, symmetry)),
  };
  const { timing: unite, result: part } = await timeTask(uniting, atLeastFew(effort));
  const { timing: copy, result: ring } = await timeTask(
    { name: "its copies", run: () => turnRound(part, units) },
    effort,
  );
  const counts = { units, beads: spheres.length, unitBeads };
  return { name, ...counts, unite, copy, checksum: checksumOf(ring) };
}
