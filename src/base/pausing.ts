/**
 * Work in pieces: a generator that yields where it may be interrupted, with the place in the document that it works next.
 *
 * So the same code works at once, or gives way to a signal (`Work.through`), and neither hands a promise through every loop.
 */
export type Pausing<Result> = Generator<string | undefined | typeof BREATH, Result, void>;

/** Yielded within a step: the work may be interrupted here, but is no further than that. */
export const BREATH = Symbol("breath");

/** Triangles, corners or points that are handled between two places where work may be interrupted: some milliseconds. Chosen. */
export const AT_A_BREATH = 4096;

/** Works it out at once. */
export function finish<Result>(work: Pausing<Result>): Result {
  for (;;) {
    const step = work.next();
    if (step.done === true) return step.value;
  }
}
