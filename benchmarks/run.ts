/**
 * The benchmark: `npm run bench`, with `-- --quick` for few calls a task, `-- --json` for the numbers unrounded.
 * Results go to standard output, progress to standard error.
 */
import { parseArgs } from "node:util";
import { designs } from "./designs.js";
import { FULL, QUICK } from "./effort.js";
import { timeFlat } from "./flat.js";
import { timeGrowth } from "./growth.js";
import { measureMemory } from "./memory.js";
import { timePicture } from "./picture.js";
import { timeReading } from "./reading.js";
import { type Results, thisMachine } from "./results.js";
import { showResults } from "./show.js";
import { type DesignTimings, timeDesign } from "./time-design.js";
import { timeWhole } from "./whole.js";
import { timeWriting } from "./writing.js";

const { quick, json } = parseArgs({
  options: { quick: { type: "boolean", default: false }, json: { type: "boolean", default: false } },
}).values;
const effort = quick ? QUICK : FULL;

// First, while this process is small: see memory.ts.
const memory = measureMemory();
const whole = await timeWhole(effort);
const timings: DesignTimings[] = [];
for (const design of designs) timings.push(await timeDesign(design, effort));
const results: Results = {
  machine: thisMachine(quick),
  memory,
  whole,
  designs: timings,
  growth: await timeGrowth(effort),
  flat: await timeFlat(effort),
  writing: await timeWriting(effort),
  reading: await timeReading(effort),
  picture: await timePicture(effort),
};
process.stdout.write(json ? `${JSON.stringify(results, null, 2)}\n` : `${showResults(results)}\n`);
