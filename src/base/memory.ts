/**
 * Remembers parts of a stage's work: what was made of the same things and the same values in one of the stage's last runs
 * is taken over.
 */
import { canonicalText } from "./canonical.js";
import type { Pausing } from "./pausing.js";

/**
 * What was made of the same, or what is made of it now.
 *
 * @param by all plain values that it depends on, compared by value; the first says what it is
 * @param of all other things that it depends on, compared by being the same ones; they must not change
 */
export type Remember = <Result>(by: readonly unknown[], of: readonly object[], make: () => Result) => Result;

/** Works everything out. */
export const FORGET: Remember = (_by, _of, make) => make();

/** Runs of a stage whose parts are kept: a design and the one before it, each at draft and at full detail. Chosen. */
const RUNS = 4;

export class Memory {
  /** What the last runs made or took over, the newest first. */
  #runs: readonly Map<string, unknown>[] = [];
  readonly #names = new WeakMap<object, number>();
  #count = 0;

  /** Parts that are kept. */
  get size(): number {
    return this.#runs.reduce((sum, run) => sum + run.size, 0);
  }

  /**
   * Begins a run.
   *
   * @param said how much was said so far: what is made while something is said is not kept, so that it is said again
   */
  begin(said: () => number): Remember {
    const run = new Map<string, unknown>();
    this.#runs = [run, ...this.#runs.slice(0, RUNS - 1)];
    return <Result>(by: readonly unknown[], of: readonly object[], make: () => Result): Result => {
      const key = `${of.map((thing) => this.#nameOf(thing)).join(" ")} ${canonicalText(by)}`;
      const known = this.#runs.find((one) => one.has(key)) ?? (run.has(key) ? run : undefined);
      if (known !== undefined) {
        const result = known.get(key) as Result;
        run.set(key, result);
        return result;
      }
      const before = said();
      const result = make();
      if (said() === before) run.set(key, result);
      return result;
    };
  }

  #nameOf(thing: object): number {
    const known = this.#names.get(thing);
    if (known !== undefined) return known;
    this.#count++;
    this.#names.set(thing, this.#count);
    return this.#count;
  }
}

/** The same of what depends on some more values and things each time. */
export function about(remember: Remember, by: readonly unknown[], of: readonly object[] = []): Remember {
  const text = canonicalText(by);
  return (more, others, make) => remember([text, ...more], [...of, ...others], make);
}

/** Thrown by what is not to be made. */
const UNKNOWN = new Error("not remembered");

/**
 * What was made of the same, or what is made of it now, in pieces.
 *
 * @param said how much was said so far: what is made while something is said is not kept, so that it is said again
 */
export function* rememberPausing<Result>(
  remember: Remember,
  { by, of, said }: { readonly by: readonly unknown[]; readonly of: readonly object[]; readonly said: () => number },
  make: () => Pausing<Result>,
): Pausing<Result> {
  try {
    return remember<Result>(by, of, () => {
      throw UNKNOWN;
    });
  } catch (error) {
    if (error !== UNKNOWN) throw error;
  }
  const before = said();
  const result = yield* make();
  return said() === before ? remember(by, of, () => result) : result;
}
