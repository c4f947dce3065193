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

  constructor(signal: EndingSignal) {
    super("interrupted: nothing was written");
    this.exitCode = exitCodeOfSignal(signal);
  }
}

/** The signal that has come since the holding began, if one has. */
export type Caught = () => Promise<EndingSignal | undefined>;

/** Runs work while signals are held back. The work asks `caught` where it can stop cleanly. */
export async function holdSignals<T>(work: (caught: Caught) => Promise<T>): Promise<T> {
  let first: EndingSignal | undefined;
  const hold = (signal: NodeJS.Signals) => {
    first ??= signal as EndingSignal;
  };
  for (const signal of SIGNALS) process.on(signal, hold);
  try {
    return await work(async () => {
      // Signals are handed over between turns of the event loop; the second turn has surely seen what came before.
      await nextTurn();
      await nextTurn();
      return first;
    });
  } finally {
    for (const signal of SIGNALS) process.off(signal, hold);
  }
}

function nextTurn(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}
