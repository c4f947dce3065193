/**
 * Work in pieces: a generator that yields where it may be interrupted, with the place in the document that it works next.
 *
 * So the same code works at once, or gives way to a signal (`Work.through`), and neither hands a promise through every loop.
 */
export type Pausing<Result> = Generator<string | undefined, Result, void>;

/** Works it out at once. */
export function finish<Result>(work: Pausing<Result>): Result {
  for (;;) {
    const step = work.next();
    if (step.done === true) return step.value;
  }
}
