/**
 * Work that may take long: it says where it is and how far, gives way to a signal, and counts what it is about to make.
 */
import { whileTimed } from "./clock.js";
import { AnnuletError } from "./errors.js";
import { beyond, LIMITS, type Limits, tooLong } from "./limits.js";
import { pause } from "./pause.js";
import { BREATH, type Pausing } from "./pausing.js";

/** Work gives way once so many milliseconds have gone by since it last did; a pause costs some 10 µs. Chosen. */
const GIVE_WAY_MS = 40;

/** Steps that work comes to where nothing else is expected. Chosen. */
const FEW_STEPS = 8;

/**
 * Once as many steps are done as were expected, four fifths of the work count as done. Chosen: beyond that the share grows as the
 * inverse of the steps, so that it still moves where there are many times as many.
 */
const STEEPNESS = 4;

/** Remedies, by what there is too much of. */
const HINTS = {
  triangles: "repeat less often, draw with fewer corners, or raise the limit",
  corners: "draw with fewer corners, cover fewer tiles, or raise the limit",
} as const;

export class Work {
  /** The part of the document that is worked now; undefined where it is none. */
  at: string | undefined;
  readonly #limits: Limits;
  readonly #signal: AbortSignal | undefined;
  readonly #start = performance.now();
  readonly #told: ((share: number) => void) | undefined;
  #since = this.#start;
  #looked = this.#start;
  #corners = 0;
  #steps = 0;
  #expected = FEW_STEPS;

  /**
   * Default: stops for nothing, and within the default limits.
   *
   * @param told hears what share of the work is done whenever that grows, 0 to below 1
   */
  constructor(limits: Limits = LIMITS, signal?: AbortSignal, told?: (share: number) => void) {
    this.#limits = limits;
    this.#signal = signal;
    this.#told = told;
  }

  /** About how many steps the work comes to; more or fewer do no harm. */
  expect(steps: number): void {
    this.#expected = Math.max(steps, 1);
  }

  /** A step is done. The share that is told grows with each, by less and less, and never reaches the whole. */
  step(): void {
    this.#steps++;
    const done = (STEEPNESS * this.#steps) / this.#expected;
    this.#told?.(done / (1 + done));
  }

  /**
   * Works something out, and gives way whenever it has worked for long.
   *
   * @throws the signal's reason
   */
  async through<Result>(pausing: Pausing<Result>): Promise<Result> {
    for (;;) {
      const step = this.#next(pausing);
      if (step.done === true) return step.value;
      if (step.value !== BREATH) {
        this.at = step.value ?? this.at;
        this.step();
      }
      if (this.#isLong()) await this.rest();
    }
  }

  /** The next piece. Deep inside it may be asked whether its time is over; what is too tangled there gets its place here. */
  #next<Result>(pausing: Pausing<Result>): ReturnType<Pausing<Result>["next"]> {
    try {
      return whileTimed(
        () => this.#look(),
        () => pausing.next(),
      );
    } catch (error) {
      if (!(error instanceof AnnuletError) || error.code !== "art-too-tangled" || this.at === undefined) throw error;
      throw new AnnuletError({ ...error.problems[0], path: error.path ?? this.at }, { cause: error });
    }
  }

  /** Within what cannot give way: its time may be over, and as long as it goes on, the share grows now and then. */
  #look(): void {
    this.requireTime(this.at);
    const now = performance.now();
    if (now - Math.max(this.#since, this.#looked) < GIVE_WAY_MS) return;
    this.#looked = now;
    this.step();
  }

  #isLong(): boolean {
    return performance.now() - this.#since >= GIVE_WAY_MS;
  }

  /**
   * Gives way, if it has worked for long.
   *
   * @throws the signal's reason
   */
  async mayRest(): Promise<void> {
    if (this.#isLong()) await this.rest();
  }

  /**
   * Gives way.
   *
   * @throws the signal's reason
   */
  async rest(): Promise<void> {
    this.step();
    await pause();
    this.#signal?.throwIfAborted();
    this.#since = performance.now();
  }

  /**
   * For work that cannot give way: ends it once its time is over.
   *
   * @throws AnnuletError `too-long`
   */
  requireTime(path: string | undefined): void {
    const { seconds: most } = this.#limits;
    if (performance.now() - this.#start > 1000 * most) throw tooLong(most, path);
  }

  /**
   * Corners are about to be made, on top of those told before.
   *
   * @throws AnnuletError `too-many-corners`
   */
  addCorners(count: number, path: string): void {
    this.#corners += count;
    const { corners: most } = this.#limits;
    if (this.#corners <= most) return;
    const message = `the art comes to about ${inWords(this.#corners)} corners in all its copies`;
    throw beyond("corners", message, { most, value: Math.round(this.#corners), path, hint: HINTS.corners });
  }

  /**
   * A ring of so many triangles is about to be made.
   *
   * @param path of what asks for most of them
   * @throws AnnuletError `too-many-triangles`
   */
  requireTriangles(count: number, path: string | undefined): void {
    const { triangles: most } = this.#limits;
    if (count <= most) return;
    const message = `the ring comes to about ${inWords(count)} triangles`;
    throw beyond("triangles", message, { most, value: Math.round(count), path, hint: HINTS.triangles });
  }
}

/** A large number in two digits. */
function inWords(count: number): string {
  if (count < 1e6) return String(Number(count.toPrecision(2)));
  return `${Number((count / 1e6).toPrecision(2))} million`;
}
