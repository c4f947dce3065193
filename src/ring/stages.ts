/**
 * Runs the stages of a build one after the other: times each, tells progress, stops when asked to.
 */
import { AnnuletError, type Warn, type Warning } from "../base/errors.js";
import { pause } from "../base/pause.js";

/** How far a build has come. */
export interface Progress {
  /** The stage that begins now; `done` at the end. */
  readonly stage: string;
  /** Share of the whole, 0 to 1, by the stages' usual shares of the time. */
  readonly share: number;
}

export interface StageOptions {
  readonly signal?: AbortSignal;
  readonly onProgress?: (progress: Progress) => void;
}

/**
 * The stages in order with their usual shares of the time: the mean over the examples at their own tolerances, rounded.
 * Decimation is off as a rule.
 */
const USUAL_SHARES = {
  document: 0.01,
  size: 0.005,
  fit: 0.02,
  profile: 0.01,
  pattern: 0.145,
  wrap: 0.03,
  solids: 0.19,
  union: 0.55,
  decimate: 0,
  checks: 0.01,
  measure: 0.03,
} as const;

export type StageName = keyof typeof USUAL_SHARES;

export class Stages {
  /** Milliseconds of each stage that has run. */
  readonly timings: Partial<Record<StageName, number>> = {};
  readonly warnings: Warning[] = [];
  readonly warn: Warn = (warning) => {
    this.warnings.push(warning);
  };
  readonly #options: StageOptions;
  #share = 0;

  constructor(options: StageOptions) {
    this.#options = options;
  }

  /**
   * Runs a stage. Gives way to other work first, so that a signal can be raised between stages.
   *
   * @throws what the work throws; an AnnuletError takes the warnings raised so far with it
   */
  async run<Result>(stage: StageName, work: () => Result | Promise<Result>): Promise<Result> {
    this.#options.onProgress?.({ stage, share: this.#share });
    await pause();
    this.#options.signal?.throwIfAborted();
    const start = performance.now();
    const result = await this.#attempt(work);
    this.timings[stage] = performance.now() - start;
    this.#share = Math.min(1, this.#share + USUAL_SHARES[stage]);
    return result;
  }

  async #attempt<Result>(work: () => Result | Promise<Result>): Promise<Result> {
    try {
      return await work();
    } catch (cause) {
      if (!(cause instanceof AnnuletError) || this.warnings.length === 0) throw cause;
      throw new AnnuletError(cause.problems, { cause, warnings: this.warnings });
    }
  }
}
