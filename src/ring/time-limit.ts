/**
 * A question's signal that also goes up when its time is over.
 */
import { tooLong } from "../base/limits.js";

/** Longest time that timers take, ms. */
const MOST_MS = 2 ** 31 - 1;

export class TimeLimit {
  readonly #stop = new AbortController();
  readonly #timer: ReturnType<typeof setTimeout>;
  readonly #asker: AbortSignal | undefined;
  readonly #follow: () => void;

  /**
   * @param asker goes up, and this one with it
   * @param where says what was worked when the time was over
   */
  constructor(seconds: number, asker: AbortSignal | undefined, where: () => string | undefined) {
    this.#asker = asker;
    this.#follow = () => this.#stop.abort(asker?.reason);
    if (asker?.aborted) this.#follow();
    asker?.addEventListener("abort", this.#follow, { once: true });
    const over = () => this.#stop.abort(tooLong(seconds, where()));
    this.#timer = setTimeout(over, Math.min(1000 * seconds, MOST_MS));
  }

  get signal(): AbortSignal {
    return this.#stop.signal;
  }

  /** The question is answered: nothing goes up any more. */
  end(): void {
    clearTimeout(this.#timer);
    this.#asker?.removeEventListener("abort", this.#follow);
  }
}
