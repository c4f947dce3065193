/**
 * Work that several wait for: whoever's signal goes up leaves, and the work is stopped when nobody is left.
 */

export class SharedRun<Result> {
  readonly #stop = new AbortController();
  readonly #result: Promise<Result>;
  readonly #over: () => void;
  #waiting = 0;

  /**
   * Begins in the next turn of the queue of promises, so that the one who begins it waits for it already.
   *
   * @param over is called when nobody waits for the work any more, and when it has ended
   */
  constructor(work: (signal: AbortSignal) => Promise<Result>, over: () => void) {
    this.#over = over;
    this.#result = Promise.resolve().then(() => work(this.#stop.signal));
    this.#result.then(over, over);
  }

  /** @throws the signal's reason as soon as it goes up; else what the work throws */
  wait(signal: AbortSignal | undefined): Promise<Result> {
    this.#waiting++;
    return new Promise((resolve, reject) => {
      const leave = () => {
        this.#waiting--;
        if (this.#waiting === 0) {
          this.#over();
          this.#stop.abort(signal?.reason);
        }
        reject(signal?.reason);
      };
      if (signal?.aborted) {
        leave();
        return;
      }
      signal?.addEventListener("abort", leave, { once: true });
      this.#result.then(resolve, reject).finally(() => signal?.removeEventListener("abort", leave));
    });
  }
}
