/**
 * One who hears of progress while others may wait for the same work: what goes wrong there is their own matter alone.
 */
import type { Progress } from "./progress.js";

export class Heard {
  /** Undefined where nobody listens. */
  readonly hear: ((progress: Progress) => void) | undefined;
  #thrown: { readonly error: unknown } | undefined;
  #over = false;

  /** @param signal once it is raised nothing more is told */
  constructor(onProgress: ((progress: Progress) => void) | undefined, signal: AbortSignal | undefined) {
    if (onProgress === undefined) return;
    this.hear = (progress) => {
      if (this.#over || this.#thrown !== undefined || signal?.aborted === true) return;
      try {
        onProgress(progress);
      } catch (error) {
        this.#thrown = { error };
      }
    };
  }

  /** @throws what the listener threw */
  rethrow(): void {
    if (this.#thrown !== undefined) throw this.#thrown.error;
  }

  /** The question is answered: the work may go on for others. */
  end(): void {
    this.#over = true;
  }
}
