/**
 * The benchmark: `npm run bench`, with `-- --quick` for few calls a task, `-- --json` for the numbers unrounded. With
 * `-- --changes` only what changes of an opened ring cost is timed, with `-- --starts` only what starts cost, with `-- --drafts` only
 * what drafts cost against full builds, with `-- --stones` only a ring with stones, with `-- --ranges` only what ranges cost over bare builds. With `-- --examples` every example's union is timed instead, with `-- --examples=PART` those whose names have it in them.
 * Results go to standard output, progress to standard error.
 */
import { parseArgs } from "node:util";
import { timeChanges } from "./changes.js";
import { designs } from "./designs.js";
import { timeDrafts } from "./drafts.js";
import { FULL, QUICK } from "./effort.js";
import { timeExamples } from "./examples.js";
import { timeFlat } from "./flat.js";
import { timeGrowth } from "./growth.js";
import { measureMemory } from "./memory.js";
import { timePicture } from "./picture.js";
import { timeRanges } from "./ranges.js";
import { timeReading } from "./reading.js";
import { type Results, thisMachine } from "./results.js";
import { showResults } from "./show.js";
import { showChanges } from "./show-changes.js";
import { showDrafts } from "./show-drafts.js";
import { showExamples } from "./show-examples.js";
import { showRanges } from "./show-ranges.js";
import { showStarts } from "./show-starts.js";
import { showStones } from "./show-stones.js";
import { timeStarts } from "./starts.js";
import { timeStones } from "./stones.js";
import { type DesignTimings, timeDesign } from "./time-design.js";
import { timeWhole } from "./whole.js";
import { timeWriting } from "./writing.js";

// An option that may stand alone is not known to the parser: it gets its value here.
const args = process.argv.slice(2).map((arg) => (arg === "--examples" ? "--examples=" : arg));
const { quick, json, examples, changes, starts, drafts, stones, ranges } = parseArgs({
  args,
  options: {
    quick: { type: "boolean", default: false },
    json: { type: "boolean", default: false },
    examples: { type: "string" },
    changes: { type: "boolean", default: false },
    starts: { type: "boolean", default: false },
    drafts: { type: "boolean", default: false },
    stones: { type: "boolean", default: false },
    ranges: { type: "boolean", default: false },
  },
}).values;
const effort = quick ? QUICK : FULL;
process.stdout.write(`${await asked()}\n`);

function asked(): string | Promise<string> {
  if (starts) return onlyStarts();
  if (changes) return onlyChanges();
  if (drafts) return onlyDrafts();
  if (stones) return onlyStones();
  if (ranges) return onlyRanges();
  return examples === undefined ? everything() : unionOfExamples(examples);
}

async function unionOfExamples(part: string): Promise<string> {
  const rows = await timeExamples(effort, part);
  return json ? JSON.stringify(rows, null, 2) : showExamples(rows);
}

async function onlyChanges(): Promise<string> {
  const rows = await timeChanges(effort);
  return json ? JSON.stringify(rows, null, 2) : showChanges(rows);
}

async function onlyDrafts(): Promise<string> {
  const rows = await timeDrafts(effort, examples ?? "");
  return json ? JSON.stringify(rows, null, 2) : showDrafts(rows);
}

async function onlyStones(): Promise<string> {
  const timing = await timeStones(effort);
  return json ? JSON.stringify(timing, null, 2) : showStones(timing);
}

async function onlyRanges(): Promise<string> {
  const rows = await timeRanges(quick);
  return json ? JSON.stringify(rows, null, 2) : showRanges(rows);
}

function onlyStarts(): string {
  const rows = timeStarts(effort);
  return json ? JSON.stringify(rows, null, 2) : showStarts(rows);
}

async function everything(): Promise<string> {
  // First, while this process is small: see memory.ts.
  const memory = measureMemory();
  const startTimings = timeStarts(effort);
  const whole = await timeWhole(effort);
  const timings: DesignTimings[] = [];
  for (const design of designs) timings.push(await timeDesign(design, effort));
  const results: Results = {
    machine: thisMachine(quick),
    memory,
    starts: startTimings,
    whole,
    changes: await timeChanges(effort),
    designs: timings,
    growth: await timeGrowth(effort),
    flat: await timeFlat(effort),
    writing: await timeWriting(effort),
    reading: await timeReading(effort),
    picture: await timePicture(effort),
    stones: await timeStones(effort),
  };
  return json ? JSON.stringify(results, null, 2) : showResults(results);
}
