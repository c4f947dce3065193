/**
 * Times one task with tinybench. The result that is checked comes from a call before the timing.
 */
import { Bench } from "tinybench";
import { type Effort, SLOW } from "./effort.js";

export interface Task<Result> {
  readonly name: string;
  readonly run: () => Result | Promise<Result>;
}

export interface Timing {
  readonly name: string;
  /** ms */
  readonly median: number;
  /** Median distance of the calls' times from their median, ms. */
  readonly spread: number;
  /** Median time of all threads together on a processor, ms: other programs make it longer by less than the other. */
  readonly cpu: number;
  /** Number of timed calls. */
  readonly calls: number;
}

/** The timing, and what the task gave back. The call that is not timed warms up; tasks that are not slow get more. */
export async function timeTask<Result>(
  { name, run }: Task<Result>,
  { time, calls, slowCalls }: Effort,
): Promise<{ timing: Timing; result: Result }> {
  process.stderr.write(`  ${name} … `);
  const start = performance.now();
  const outcome = run();
  const result = await outcome;
  const cost = performance.now() - start;

  const bench = new Bench({
    time,
    iterations: cost > SLOW ? slowCalls : calls,
    warmup: cost < time,
    warmupTime: time / 4,
    warmupIterations: 1,
    throws: true,
  });
  const used: number[] = [];
  let before = process.cpuUsage();
  bench.add(name, run, {
    async: outcome instanceof Promise,
    beforeEach: () => {
      before = process.cpuUsage();
    },
    afterEach: (mode) => {
      if (mode === "run") used.push(cpuTime(process.cpuUsage(before)));
    },
  });
  const [task] = await bench.run();
  if (task.result.state !== "completed") throw new Error(`${name} was not timed: ${task.result.state}`);
  const { p50, mad, samplesCount } = task.result.latency;
  process.stderr.write(`${p50.toPrecision(3)} ms\n`);
  return { timing: { name, median: p50, spread: mad, cpu: median(used), calls: samplesCount }, result };
}

/** What one call takes of all threads together on a processor, ms. */
export async function cpuOf(run: () => Promise<unknown>): Promise<number> {
  const before = process.cpuUsage();
  await run();
  return cpuTime(process.cpuUsage(before));
}

/** ms */
function cpuTime({ user, system }: { readonly user: number; readonly system: number }): number {
  return (user + system) / 1e3;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return (sorted[(sorted.length - 1) >> 1] + sorted[sorted.length >> 1]) / 2;
}
