/**
 * Holds Ctrl-C and its kin back while files are written, so that no half file and no temporary file stays.
 *
 * Bytes are made and written synchronously, so a signal that comes meanwhile waits. `caught` looks for one that has come. Outside, the
 * signals keep their usual effect: they end the program at once, also in the middle of a long calculation.
 */
import { type EndingSignal, exitCodeOfSignal } from "./exit-codes.js";

const SIGNALS: readonly EndingSignal[] = ["SIGINT", "SIGTERM", "SIGHUP"];

/** Thrown where a held signal takes effect. */
export class Interrupted extends Error {
  override readonly name = "Interrupted";
  readonly exitCode: number;

  /** @param message what has come of it; default nothing */
  constructor(signal: EndingSignal, message = "interrupted: nothing was written") {
    super(message);
    this.exitCode = exitCodeOfSignal(signal);
  }
}

/** The signal that has come since the holding began, if one has. */
export type Caught = () => Promise<EndingSignal | undefined>;

/**
 * Runs work while signals are held back. The work asks `caught` where it can stop cleanly; `stop` is aborted at once, for
 * work that waits for something else.
 */
export async function holdSignals<T>(work: (caught: Caught, stop: AbortSignal) => Promise<T>): Promise<T> {
  let first: EndingSignal | undefined;
  const stopper = new AbortController();
  const hold = (signal: NodeJS.Signals) => {
    first ??= signal as EndingSignal;
    stopper.abort();
  };
  for (const signal of SIGNALS) process.on(signal, hold);
  try {
    return await work(async () => {
      // Signals are handed over between turns of the event loop; the second turn has surely seen what came before.
      await nextTurn();
      await nextTurn();
      return first;
    }, stopper.signal);
  } finally {
    for (const signal of SIGNALS) process.off(signal, hold);
  }
}

function nextTurn(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}
