/**
 * Times a ring with a row of bead-set stones and milgrain: its warm build beside that of the README's ring, in turns, and its union
 * beside the reference's of the whole ring.
 */
import { finish } from "../src/base/pausing.js";
import { readDesign } from "../src/design/read.js";
import type { DesignInput } from "../src/design/schema.js";
import { checkSolid } from "../src/judge/gate.js";
import type { Mesh } from "../src/mesh/mesh.js";
import { build } from "../src/ring/build.js";
import { openInside } from "../src/ring/open-ring.js";
import { makeParts } from "../src/solids/parts.js";
import { manifoldKernel } from "../src/union/kernels/manifold.js";
import { uniteRing } from "../src/union/union.js";
import { type Checksum, checksumOf } from "./checksum.js";
import { large } from "./designs.js";
import { atLeastFew, type Effort, QUICK } from "./effort.js";
import { makeSteps, manifoldSteps } from "./manifold-steps.js";
import { cpuOf, median, type Timing, timeTask } from "./time-task.js";

/** 60 bead-set stones in a row between petals with milgrain, and milgrain on the rails: 20 tiles, so that three stones come on each. */
const SHINGLE: DesignInput = {
  annulet: 1,
  name: "Shingle row (invented for the benchmark)",
  size: { system: "iso", value: 54 },
  profile: { width: 8, thickness: 2.6, outside: { form: "channel", rail: 0.9, depth: 0.5 } },
  pattern: {
    symmetry: "p2mm",
    fit: { repeats: 20, hold: "band", aspect: 1.8 },
    regions: [
      {
        name: "petal",
        path: "M 0.12 0.5 L 0.5 0.78 L 0.88 0.5 L 0.5 0.32 Z",
        ribbon: { width: 0.45, side: "inside" },
        height: 0.3,
        beads: { diameter: 0.34, on: "border" },
      },
    ],
  },
  beads: [{ along: "rail", diameter: 0.4, count: 160 }],
  stones: [{ name: "row", size: 1, place: { form: "row", count: 60 }, setting: { form: "bead-set", border: 0.15 } }],
  material: "ag925",
};

export interface StonesTiming {
  readonly stones: number;
  readonly beads: number;
  /** How its union came about. */
  readonly road: string;
  readonly checksum: Checksum;
  /** CPU ms of warm builds, gate and proof included, medians: of the README's ring, and of the one with stones. */
  readonly large: number;
  readonly own: number;
  /** The union with all that is needed for it, and the reference's of the whole ring. */
  readonly union: Timing;
  readonly reference: Timing;
}

export async function timeStones(effort: Effort): Promise<StonesTiming> {
  const [plain, own] = await inTurns(effort, [large.document, SHINGLE]);
  const names = ["profile", "pattern", "wrap", "marks", "beads", "stones"] as const;
  const { answers } = await openInside(SHINGLE).ask(names);
  const { beads: placed, stones: set, ...laid } = answers;
  const { tolerance, beads: beadRuns } = readDesign(SHINGLE);
  const { stones } = set;
  const make = () => finish(makeParts({ ...laid, placed, stones, tolerance, beadRuns, warn: () => undefined }));
  const check = (mesh: Mesh) => checkSolid(mesh);
  const unite = () => uniteRing(make(), { kernel: manifoldKernel, fallback: manifoldKernel, check });
  const { timing: union, result } = await timeTask({ name: "annulet", run: unite }, effort);
  const whole = makeSteps(make().steps);
  const reference = await timeTask({ name: "manifold, whole ring", run: () => manifoldSteps(whole) }, QUICK);
  return {
    stones: stones.length,
    beads: make().spheres.length,
    road: result.roadReason,
    checksum: checksumOf(result.mesh),
    large: plain,
    own,
    union,
    reference: reference.timing,
  };
}

/** CPU ms of builds of some documents, one after another and again, so that what else the machine does meets all of them. */
async function inTurns(effort: Effort, documents: readonly unknown[]): Promise<number[]> {
  const { calls } = atLeastFew(effort);
  const used: number[][] = documents.map(() => []);
  for (let time = -WARM; time < calls; time++) {
    for (const [i, document] of documents.entries()) {
      const cpu = await cpuOf(() => build(document));
      if (time >= 0) used[i].push(cpu);
    }
    process.stderr.write(`  ${time + WARM + 1} of ${calls + WARM}\n`);
  }
  return used.map(median);
}

/** Builds of each before the timing: by then V8 has compiled what takes the time. */
const WARM = 3;
