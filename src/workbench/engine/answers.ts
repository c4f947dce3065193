/**
 * What is known of the ring that the document describes: asked of the worker after each change, at draft at once and in full
 * after a pause. A newer change ends what is being worked out in full for an older one; a draft may come to its end, so that
 * what is dragged is seen on the way.
 */
import { batch, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { AnnuletError, type Rings, type Warning, type WorkerRing, type WorkerSetup } from "../../entries/worker.js";
import type { Problem, Progress, TileQuestion } from "../../index.js";

/** Each answer: what it is worked out by. */
const QUESTIONS = {
  design: (ring: WorkerRing): ReturnType<WorkerRing["design"]> => ring.design(),
  size: (ring: WorkerRing, { signal }: Asking) => ring.size({ signal }),
  fit: (ring: WorkerRing, { signal }: Asking) => ring.fit({ signal }),
  profile: (ring: WorkerRing, { signal }: Asking) => ring.profile({ signal }),
  tile: (ring: WorkerRing, { signal }: Asking, tile: TileQuestion) =>
    ring
      .tile(tile, { signal })
      .catch((error: unknown) => firstTile(ring, signal, error))
      .catch(noneWithoutPattern),
  lanes: laneTiles,
  beads: (ring: WorkerRing, { signal }: Asking) => ring.beads({ signal }),
  stones: (ring: WorkerRing, { signal }: Asking) => ring.stones({ signal }),
  buffers: (ring: WorkerRing, asking: Asking) => ring.buffers(asking),
  report: (ring: WorkerRing, asking: Asking) => ring.report({ ...asking, piece: "finished" }),
  weights: (ring: WorkerRing, asking: Asking) => ring.weights(asking),
  check: (ring: WorkerRing, asking: Asking) => ring.check(asking),
} as const;

interface Asking {
  readonly signal: AbortSignal;
  readonly detail: "draft" | "full";
  readonly onProgress?: ((progress: Progress) => void) | undefined;
}

/** The first lane's tile, where the document has what was shown no more. @throws anything else */
function firstTile(ring: WorkerRing, signal: AbortSignal, error: unknown): ReturnType<WorkerRing["tile"]> {
  if (!(error instanceof AnnuletError) || !/^no-such-(?:lane|part)$/.test(error.code)) throw error;
  return ring.tile({}, { signal });
}

/** A plain band has no tile: that is nothing wrong. @throws anything else */
function noneWithoutPattern(error: unknown): undefined {
  if (!(error instanceof AnnuletError) || error.code !== "no-pattern") throw error;
  return undefined;
}

/** One tile, or one cycle, of each lane, the lowest first; none where the pattern is one. */
async function laneTiles(ring: WorkerRing, { signal }: Asking): Promise<Awaited<ReturnType<WorkerRing["tile"]>>[]> {
  const { lanes = [] } = (await ring.fit({ signal })) ?? {};
  return Promise.all(lanes.map(({ name }) => ring.tile({ lane: name }, { signal })));
}

/** The name of an answer. */
export type AnswerName = keyof typeof QUESTIONS;

/** What an answer is. */
export type AnswerOf<Name extends AnswerName> = Awaited<ReturnType<(typeof QUESTIONS)[Name]>>;

/** An answer with the text that it belongs to and how fine it is. */
export interface Answer<Value> {
  readonly value: Value;
  readonly text: string;
  readonly detail: "draft" | "full";
}

/** What is being worked out. */
export interface Working {
  readonly detail: "draft" | "full";
  readonly stage: string;
  /** 0 to 1. */
  readonly share: number;
  /** When it began, `performance.now()`. */
  readonly since: number;
}

/** At draft, while the document changes: what the views show first. */
const AT_ONCE = ["design", "profile", "tile", "lanes", "fit", "size", "beads", "stones", "buffers", "report"] as const;

/** In full, once nothing changes. */
const IN_FULL = ["buffers", "report", "weights", "check"] as const;

/** How long nothing may change before the ring is worked out in full, ms. Chosen. */
const PAUSE = 600;

/**
 * How long a draft may still take once the document has changed again, ms: without it a drag that changes faster than drafts
 * are made would show nothing until it rests. Chosen: what takes longer does not look alive anyway.
 */
const LET_FINISH = 1000;

/** How often progress is shown, ms: each time the page is laid out anew. Chosen. */
const SELDOM = 100;

type Signals = { readonly [Name in AnswerName]: Signal<Answer<AnswerOf<Name>> | undefined> };

export class Answers {
  /** The newest of each; older than the document while `working`. */
  readonly of: { readonly [Name in AnswerName]: ReadonlySignal<Answer<AnswerOf<Name>> | undefined> };
  /** What is wrong with the document, from the newest questions. */
  readonly problems: ReadonlySignal<readonly Problem[]>;
  readonly warnings: ReadonlySignal<readonly Warning[]>;
  readonly working: ReadonlySignal<Working | undefined>;
  /** Whether answers are still to come, the pause before the ring is worked out in full among it. */
  readonly pending: ReadonlySignal<boolean>;
  /** Whether the maker stopped the work that the newest document asked for. */
  readonly stopped: ReadonlySignal<boolean>;
  readonly #signals: Signals;
  readonly #problems = signal<readonly Problem[]>([]);
  readonly #warnings = signal<readonly Warning[]>([]);
  readonly #working = signal<Working | undefined>(undefined);
  readonly #pending = signal(false);
  readonly #stopped = signal(false);
  #rings: Rings;
  #setup: WorkerSetup;
  #ring: WorkerRing | undefined;
  /** The ring whose draft is being worked out, and what ends it once the document has changed again. */
  #drafting: WorkerRing | undefined;
  #late: ReturnType<typeof setTimeout> | undefined;
  #text = "";
  #tile: TileQuestion = {};
  #stop = new AbortController();

  constructor(rings: Rings, setup: WorkerSetup = {}) {
    this.#rings = rings;
    this.#setup = setup;
    this.#signals = Object.fromEntries(Object.keys(QUESTIONS).map((name) => [name, signal(undefined)])) as never;
    this.of = this.#signals;
    this.problems = this.#problems;
    this.warnings = this.#warnings;
    this.working = this.#working;
    this.pending = this.#pending;
    this.stopped = this.#stopped;
  }

  /** The ring of the newest document, for what is asked once: files, sheets, pictures. Undefined before the first. */
  get ring(): WorkerRing | undefined {
    return this.#ring;
  }

  /**
   * Asks for everything anew where the text is another.
   *
   * @param otherFiles whether what the design names may be another too
   */
  show(text: string, otherFiles = false): void {
    if (text === this.#text && !otherFiles && this.#ring !== undefined) return;
    this.#text = text;
    const before = this.#ring;
    this.#ring = before === undefined ? this.#rings.open(text, this.#setup) : before.change(text);
    if (before !== this.#drafting) before?.close();
    if (this.#drafting === undefined) void this.#work(this.#ring, text);
    // It begins once the draft has ended.
    else if (otherFiles) this.#stop.abort();
    else this.#late ??= setTimeout(() => this.#stop.abort(), LET_FINISH);
  }

  /** Shows other tiles from now on. */
  showTile(question: TileQuestion): void {
    if (JSON.stringify(question) === JSON.stringify(this.#tile)) return;
    this.#tile = question;
    const { signal } = this.#stop;
    if (this.#ring === undefined) return;
    // What is wrong with the document is told already; the tile stays as it is.
    this.#askOne("tile", this.#ring, { text: this.#text, detail: "draft", signal }).catch(() => undefined);
  }

  /** Ends the work; the answers stay as they are until the document changes. */
  stop(): void {
    this.#stopped.value = true;
    this.#stop.abort();
  }

  /** Goes on with other rings, since the worker died, or with other files or another kernel. */
  restart(rings: Rings, setup: WorkerSetup = this.#setup): void {
    this.#rings = rings;
    this.#setup = setup;
    this.#ring = undefined;
    this.#drafting = undefined;
    this.show(this.#text);
  }

  /** Asks for nothing: the worker died of this text, and another would too. The next change asks again. */
  rest(): void {
    this.stop();
    this.#ring = undefined;
    this.#problems.value = [];
  }

  async #work(ring: WorkerRing, text: string): Promise<void> {
    this.#stop.abort();
    const stop = new AbortController();
    this.#stop = stop;
    this.#stopped.value = false;
    this.#pending.value = true;
    try {
      await this.#draft(ring, { text, detail: "draft", signal: stop.signal });
      if (this.#ring !== ring) return;
      await wait(PAUSE, stop.signal);
      await this.#ask(IN_FULL, ring, { text, detail: "full", signal: stop.signal });
    } catch (error) {
      if (!stop.signal.aborted) throw error;
    } finally {
      if (this.#stop === stop) {
        this.#working.value = undefined;
        this.#pending.value = false;
      }
    }
  }

  /** @throws the signal's reason */
  async #draft(ring: WorkerRing, asked: Asked): Promise<void> {
    this.#drafting = ring;
    try {
      await this.#ask(AT_ONCE, ring, asked);
    } finally {
      if (this.#drafting === ring) this.#drafted(ring);
    }
  }

  /** Goes on with the newest document, where it has changed since the draft began. */
  #drafted(ring: WorkerRing): void {
    clearTimeout(this.#late);
    this.#late = undefined;
    this.#drafting = undefined;
    if (this.#ring === ring) return;
    ring.close();
    if (this.#ring !== undefined && !this.#stopped.peek()) void this.#work(this.#ring, this.#text);
  }

  /** Asks for several; each is shown when it comes. @throws the signal's reason */
  async #ask(names: readonly AnswerName[], ring: WorkerRing, asked: Asked): Promise<void> {
    const since = performance.now();
    const { signal, detail } = asked;
    let next = since;
    const onProgress = ({ stage, share }: Progress): void => {
      const now = performance.now();
      if (signal.aborted || now < next) return;
      next = now + SELDOM;
      this.#working.value = { detail, stage, share, since };
    };
    this.#working.value = { detail, stage: "document", share: 0, since };
    // The last waits for the whole ring; the others' shares are parts of it.
    const asks = names.map((name) => {
      return this.#askOne(name, ring, name === names.at(-1) ? { ...asked, onProgress } : asked);
    });
    const outcomes = await Promise.allSettled(asks);
    signal.throwIfAborted();
    this.#working.value = undefined;
    const problems = outcomes.flatMap((outcome) =>
      outcome.status === "rejected" ? AnnuletError.from(outcome.reason).problems : [],
    );
    this.#problems.value = withoutTwins(problems);
  }

  async #askOne(name: AnswerName, ring: WorkerRing, { text, ...asking }: Asked): Promise<void> {
    const ask = QUESTIONS[name] as (ring: WorkerRing, asking: Asking, tile: TileQuestion) => Promise<unknown>;
    const value = await ask(ring, asking, this.#tile);
    if (asking.signal.aborted) return;
    batch(() => {
      (this.#signals[name] as Signal<unknown>).value = { value, text, detail: asking.detail };
      if (name === "report") this.#warnings.value = (value as AnswerOf<"report">).warnings;
    });
  }
}

interface Asked extends Asking {
  readonly text: string;
}

/** Each question tells what is wrong with the document; it is shown once. */
function withoutTwins(problems: readonly Problem[]): readonly Problem[] {
  const key = ({ code, path, message }: Problem) => `${code} ${path} ${message}`;
  return [...new Map(problems.map((problem) => [key(problem), problem])).values()];
}

/** @throws the signal's reason */
function wait(time: number, signal: AbortSignal): Promise<void> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(resolve, time);
    signal.addEventListener("abort", () => {
      clearTimeout(timer);
      reject(signal.reason);
    });
  });
}
