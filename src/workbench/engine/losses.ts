/**
 * How often the worker died, so that a design that brings it down each time does not do so for ever.
 */

/** How often a worker is started anew for one and the same text. Chosen: once may be chance, twice hardly. */
const MOST_TRIES = 2;

export class Losses {
  /** Whether no worker is asked until something changes. */
  resting = false;
  #text: string | undefined;
  #times = 0;

  /** Whether another worker is started for this text, after one has died over it. */
  mayTryAgain(text: string): boolean {
    this.#times = text === this.#text ? this.#times + 1 : 1;
    this.#text = text;
    this.resting = this.#times > MOST_TRIES;
    return !this.resting;
  }
}
