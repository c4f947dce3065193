/**
 * Which part of the work takes long, so that it can be said.
 */

/** After how long in one part it is said, ms. Chosen. */
export const LONG = 3000;

/** Follows the parts of one piece of work. */
export class SlowPart {
  #since = Number.NEGATIVE_INFINITY;
  #stage = "";
  #work = Number.NaN;

  /**
   * The part that takes long, undefined while none does.
   *
   * @param work when the work began: another work begins anew
   * @param now ms on the same clock
   */
  at(work: number, stage: string, now: number): string | undefined {
    if (work !== this.#work || stage !== this.#stage) this.#since = work === this.#work ? now : work;
    this.#work = work;
    this.#stage = stage;
    return now - this.#since >= LONG ? stage : undefined;
  }
}
