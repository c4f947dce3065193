/**
 * Times what a change of an opened ring costs, against a ring that is opened anew with the same document, in turns.
 */
import { openRing, type Ring, type RingSetup } from "../src/ring/open-ring.js";
import { large, text } from "./designs.js";
import { atLeastFew, type Effort } from "./effort.js";
import { cpuOf, median } from "./time-task.js";

export interface ChangeTiming {
  readonly what: string;
  /** CPU ms, medians. */
  readonly changed: number;
  readonly anew: number;
  /** Stages that lay out, build, unite or measure the ring, and worked again. */
  readonly geometry: number;
  readonly unions: number;
}

type Document = ReturnType<typeof copyOf>;

/** An edit that makes another document each time. */
type Edit = (document: Document, time: number) => void;

const copyOf = () =>
  JSON.parse(text(large)) as {
    name: string;
    material: string;
    costing?: object;
    casting?: object;
    beads: { diameter: number }[];
    pattern: { regions: { height: number; beads?: { diameter: number } }[] };
  };

const edits: readonly (readonly [string, Edit])[] = [
  ["name", (d, time) => (d.name = `ring ${time}`)],
  ["material", (d, time) => (d.material = ["au750-yellow", "ag999", "pd950"][time % 3])],
  ["prices", (d, time) => (d.costing = { prices: { ag925: 1 + time } })],
  ["shrinkage", (d, time) => (d.casting = { shrinkage: 1 + 0.01 * time })],
  [
    "a region's beads",
    (d, time) => {
      for (const { beads } of d.pattern.regions.slice(0, 1)) if (beads) beads.diameter -= 0.0002 * time;
    },
  ],
  ["the rails' beads", (d, time) => (d.beads[0].diameter -= 0.0002 * time)],
  ["a boss's height", (d, time) => (d.pattern.regions[3].height += 0.0005 * time)],
];

/** Stages whose names tell that the ring itself is worked on. */
const GEOMETRY =
  /^(size|fit|profile|drawnPattern|pattern|wrap|marks|beads|parts|union|decimated|gate|measure|judgement|sprued)$/;

export async function timeChanges(effort: Effort): Promise<ChangeTiming[]> {
  process.stderr.write(`changes of ${large.name}, at draft\n`);
  const { calls } = atLeastFew(effort);
  const timings: ChangeTiming[] = [];
  for (const [what, edit] of edits) {
    timings.push(await timeOne(what, calls, edit, (ring) => ring.make({ detail: "draft" })));
  }
  const same: Edit = () => undefined;
  timings.push(await timeOne("none: check after make", calls, same, (ring) => ring.check({ detail: "draft" })));
  timings.push(await timeOne("none: sheet after make", calls, same, (ring) => ring.sheet({ detail: "draft" })));
  return timings;
}

async function timeOne(
  what: string,
  calls: number,
  edit: Edit,
  ask: (ring: Ring) => Promise<unknown>,
): Promise<ChangeTiming> {
  const worked: string[] = [];
  const setup: RingSetup = { onStage: (stage) => worked.push(stage) };
  const [changed, anew, geometry, unions]: number[][] = [[], [], [], []];
  // The first is not timed.
  for (let time = 0; time <= calls; time++) {
    const document = copyOf();
    edit(document, time + 1);
    const ring = openRing(copyOf(), setup);
    await ring.make({ detail: "draft" });
    worked.length = 0;
    const cost = await cpuOf(() => ask(ring.change(document)));
    const [again, united] = [
      worked.filter((stage) => GEOMETRY.test(stage)),
      worked.filter((stage) => stage === "union"),
    ];
    const fresh = await cpuOf(() => ask(openRing(document)));
    if (time === 0) continue;
    changed.push(cost);
    anew.push(fresh);
    geometry.push(again.length);
    unions.push(united.length);
  }
  process.stderr.write(`  ${what} ${(median(changed) / median(anew)).toFixed(2)}\n`);
  return {
    what,
    changed: median(changed),
    anew: median(anew),
    geometry: Math.max(...geometry),
    unions: Math.max(...unions),
  };
}
