/**
 * Time that is looked at from deep inside work that cannot give way: whoever begins it says how its time is told.
 */

let check: (() => void) | undefined;

/** Runs work; what is within it may ask `checkTime`. */
export function whileTimed<Result>(isOver: () => void, run: () => Result): Result {
  const outer = check;
  check = isOver;
  try {
    return run();
  } finally {
    check = outer;
  }
}

/** @throws what the one who began the work throws once its time is over; nothing where nobody minds */
export function checkTime(): void {
  check?.();
}
