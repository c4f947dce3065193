/**
 * Processes that make variants: one for each job, by tinypool.
 *
 * Processes, not threads: a process that hangs in WebAssembly is killed surely, one that is out of memory takes nobody with it, and
 * its resident memory can be read. Each starts in 0.3 s once, and posts little, since it writes its files itself.
 */
import { Tinypool } from "tinypool";
import { AnnuletError } from "../../base/errors.js";
import type { MakeAnswers, MakeTask } from "./make-variant.js";

/** Who makes tasks, as many at a time as there are jobs. */
export interface Makers {
  /** @throws AnnuletError `variant-stuck` where the time is over, `maker-lost` where the process died */
  make(task: MakeTask): Promise<MakeAnswers>;
  /** Ends all that is worked. */
  end(): Promise<void>;
  /** Is aborted where nothing can be made any more, whoever asks. Default never. */
  readonly over?: AbortSignal;
}

export interface MakersOptions {
  readonly jobs: number;
  /** Resident memory of a process, bytes, from which it is replaced by a new one. */
  readonly memory: number;
  /** The program that they run. */
  readonly program: URL;
}

/** Seconds that a process has beyond the time of its variants: the library ends a ring by itself with a better word. */
const GRACE = 5;

/**
 * V8 works in the process's one thread: processes by the number of cores leave none idle for its helpers. Of 40 rings on two cores two
 * processes took 0.66 of the wall clock of bare builds, 0.84 with helpers; one process took the same either way.
 */
const FLAGS = ["--single-threaded"];

export function startMakers({ jobs, memory, program }: MakersOptions): Makers {
  const pool = new Tinypool({
    filename: program.href,
    runtime: "child_process",
    minThreads: jobs,
    maxThreads: jobs,
    env: { ...(process.env as Record<string, string>) },
    execArgv: FLAGS,
    terminateTimeout: 10_000,
  });
  // What goes wrong with a process its task tells.
  pool.on("error", () => {});
  return {
    async make(task) {
      const limit = task.limits.seconds * task.variants.length + GRACE;
      const stop = new AbortController();
      const timer = setTimeout(() => stop.abort(), 1000 * limit);
      try {
        const answers: MakeAnswers = await pool.run(task, { name: "makeVariants", signal: stop.signal });
        if (answers.memory > memory) void pool.recycleWorkers().catch(() => {});
        return answers;
      } catch (error) {
        throw stop.signal.aborted ? stuck(limit) : lost(error);
      } finally {
        clearTimeout(timer);
      }
    },
    end: () => pool.destroy().catch(() => {}),
  };
}

function stuck(limit: number): AnnuletError {
  const hint = "simplify it, or raise the limit";
  return new AnnuletError({ code: "variant-stuck", message: `it did not end within ${limit} s and was killed`, hint });
}

function lost(cause: unknown): AnnuletError {
  const message = `the process that made it was lost: ${cause instanceof Error ? cause.message : String(cause)}`;
  return new AnnuletError(
    { code: "maker-lost", message, hint: "it may have run out of memory: try fewer jobs" },
    { cause },
  );
}
