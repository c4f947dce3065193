/**
 * Tells that a worker answers no more, where nothing else does: one that the browser ended for its memory may send no error.
 *
 * Beats are counted and not the time, since a machine that slept has only missed beats of its own.
 */

/** From one beat to the next, ms. Chosen. */
const EVERY = 2_000;

/**
 * Beats without an answer after which a worker is taken for dead: one without work answers at once, one at work between two steps,
 * which may take some seconds on a slow machine. Chosen, far beyond both.
 */
const MOST_MISSED = { idle: 10, busy: 90 } as const;

/** What beats. */
export interface Pulse {
  /** Asks the worker for a sign of life. */
  readonly ask: () => Promise<unknown>;
  readonly isBusy: () => boolean;
  /** Hears that there was none, once. */
  readonly onSilent: () => void;
}

/** @returns what ends it */
export function followPulse({ ask, isBusy, onSilent }: Pulse): () => void {
  let missed = 0;
  let isAsked = false;
  const answered = (): void => {
    missed = 0;
    isAsked = false;
  };
  const beat = (): void => {
    if (!isAsked) {
      isAsked = true;
      ask().then(answered, answered);
      return;
    }
    missed++;
    if (missed < MOST_MISSED[isBusy() ? "busy" : "idle"]) return;
    clearInterval(timer);
    onSilent();
  };
  const timer = setInterval(beat, EVERY);
  return () => clearInterval(timer);
}
