/**
 * Times a draft of each example against its full build, in turns.
 */
import { build } from "../src/ring/build.js";
import { atLeastFew, type Effort } from "./effort.js";
import { exampleDesigns } from "./example-designs.js";
import { cpuOf, median } from "./time-task.js";

export interface DraftTiming {
  readonly name: string;
  /** CPU ms, medians. */
  readonly draft: number;
  readonly full: number;
}

/** @param part of the example's name; the empty string for all of them */
export async function timeDrafts(effort: Effort, part: string): Promise<DraftTiming[]> {
  const { calls } = atLeastFew(effort);
  const timings: DraftTiming[] = [];
  for (const { name, document, files } of exampleDesigns(part)) {
    const [draft, full]: number[][] = [[], []];
    // The first is not timed.
    for (let time = 0; time <= calls; time++) {
      const coarse = await cpuOf(() => build(document, { files, detail: "draft" }));
      const fine = await cpuOf(() => build(document, { files }));
      if (time === 0) continue;
      draft.push(coarse);
      full.push(fine);
    }
    timings.push({ name, draft: median(draft), full: median(full) });
    process.stderr.write(`  ${name} ${(median(draft) / median(full)).toFixed(2)}\n`);
  }
  return timings;
}
