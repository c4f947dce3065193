/**
 * Makes many variants on all cores: one band in a run of sizes and widths. Run by `npm run examples`; the number of variants
 * follows the name: `node examples/dist/many.js 1000`. Scenario and numbers are invented for the demo.
 */
import { startPool, threads } from "./ring-pool.js";
import type { RingAnswer, RingTask } from "./ring-worker.js";

const wanted = Number(process.argv[2] ?? 8);
const pool = startPool();

/** The design of a number: as many sizes as there are, at four widths. */
function variant(number: number): string {
  return JSON.stringify({
    annulet: 1,
    name: `Ripple ${number}`,
    size: { system: "iso", value: 46 + (number % 24) },
    tolerance: 0.03,
    profile: {
      width: 4 + (number % 4) / 2,
      thickness: 1.7,
      bore: { form: "flat" },
      outside: { form: "domed", rise: 0.3 },
    },
    pattern: {
      symmetry: "p2mg",
      regions: [{ path: "M 0 -0.2 C 0.15 -0.2 0.1 0 0.25 0", ribbon: { width: 0.8 }, height: 0.4, round: 0.1 }],
    },
  });
}

let failed = 0;

async function make(number: number): Promise<void> {
  const task: RingTask = { document: variant(number), limits: { seconds: 60 } };
  const answer: RingAnswer = await pool.run(task, { name: "makeRing" });
  if ("error" in answer) {
    failed++;
    console.log(`${number}: ${answer.error.message}`);
  } else
    console.log(`${number}: ${answer.repeats} repeats, ${answer.volume.toFixed(1)} mm³, ${answer.stl.length} bytes`);
}

// No more wait than are worked: a million variants would not be in memory at once.
const running = new Set<Promise<void>>();
for (let number = 0; number < wanted; number++) {
  const job: Promise<void> = make(number).finally(() => running.delete(job));
  running.add(job);
  if (running.size >= 2 * threads) await Promise.race(running);
}
await Promise.all(running);
await pool.destroy();
console.log(`${wanted - failed} of ${wanted} made by ${threads} workers`);
