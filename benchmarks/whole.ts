/**
 * Times the README's design from document to mesh, gate included: warm in this process, and cold by `annulet make`.
 */
import { BUILD_DEFAULTS, build } from "../src/ring/build.js";
import type { Detail } from "../src/solids/detail.js";
import { type Checksum, checksumOf } from "./checksum.js";
import { large, text } from "./designs.js";
import { atLeastFew, type Effort } from "./effort.js";
import { make } from "./make.js";
import { median, type Timing, timeTask } from "./time-task.js";
import { WANTED } from "./wanted.js";

export interface WholeTiming extends Timing {
  /** ms */
  readonly wanted: number;
  readonly checksum: Checksum;
}

/** Builds before the timing: by then V8 has compiled what takes the time. */
const WARM_UP = 5;

const warm: readonly (readonly [Detail, number])[] = [
  [BUILD_DEFAULTS.detail, WANTED.warmFull],
  ["draft", WANTED.warmDraft],
];

export async function timeWhole(effort: Effort): Promise<WholeTiming[]> {
  process.stderr.write(`whole builds of ${large.name}\n`);
  const few = atLeastFew(effort);
  const timings: WholeTiming[] = [timeCold(few.slowCalls)];
  for (const [detail, wanted] of warm) {
    const name = `warm, detail ${detail}, no file`;
    for (let i = 0; i < WARM_UP; i++) await build(large.document, { detail });
    const { timing, result } = await timeTask({ name, run: () => build(large.document, { detail }) }, few);
    timings.push({ ...timing, wanted, checksum: checksumOf(result.mesh) });
  }
  return timings;
}

function timeCold(calls: number): WholeTiming {
  const name = "cold, annulet make, STL and report";
  process.stderr.write(`  ${name} … `);
  const made = Array.from({ length: calls }, () => make(text(large)));
  const walls = made.map(({ wall }) => wall);
  const middle = median(walls);
  process.stderr.write(`${middle.toPrecision(3)} ms\n`);
  return {
    name,
    calls,
    median: middle,
    cpu: median(made.map(({ cpu }) => cpu)),
    wanted: WANTED.cold,
    spread: median(walls.map((wall) => Math.abs(wall - middle))),
    checksum: made[0].report,
  };
}
