/**
 * Answers that were worked out, kept within bounds: when there are more, the ones used longest ago go.
 */
import { canonicalText } from "../base/canonical.js";
import type { AnnuletError, Warning } from "../base/errors.js";
import type { Limits } from "../base/limits.js";
import { Memory } from "../base/memory.js";
import { SharedRun } from "./shared-run.js";

/** What a stage came to, its failure too: asked again, it would fail again. */
export interface Answer {
  readonly outcome: { readonly value: unknown } | { readonly error: AnnuletError };
  /** By what stages that read it compare it. */
  readonly mark: string;
  readonly warnings: readonly Warning[];
  /** Milliseconds of the run that made it. */
  readonly ms: number;
}

/** Most answers of one stage that are kept: a design and the one before it, finished and cast, draft and full. */
const MOST_ANSWERS = 8;

/** Most bytes of meshes and pictures that are kept; the newest answer is kept, however large it is. Chosen. */
const MOST_BYTES = 256e6;

interface Kept {
  readonly stage: string;
  readonly answer: Answer;
  readonly bytes: number;
}

/** A run that others may wait for. */
export interface Shared {
  readonly stage: string;
  readonly key: string;
  /** What it is worked within: those who ask with other limits have a run of their own, and the same answer. */
  readonly by: Limits;
}

/** The answers of a ring and of those that it was changed into. */
export class AnswerStore {
  /** The one used longest ago first. */
  readonly #kept = new Map<string, Kept>();
  readonly #runs = new Map<string, SharedRun<Answer>>();
  readonly #names = new WeakMap<object, string>();
  readonly #memories = new Map<string, Memory>();
  #bytes = 0;
  #serial = 0;

  /** Answers that are kept, and bytes of meshes and pictures in them. */
  get size(): { readonly answers: number; readonly bytes: number } {
    return { answers: this.#kept.size, bytes: this.#bytes };
  }

  /** What a stage remembers of parts of its work. */
  memoryOf(stage: string): Memory {
    const memory = this.#memories.get(stage) ?? new Memory();
    this.#memories.set(stage, memory);
    return memory;
  }

  /** The stages that have answers here. */
  get stages(): readonly string[] {
    return [...new Set([...this.#kept.values()].map(({ stage }) => stage))];
  }

  /** A number that no other answer has. */
  serial(): number {
    this.#serial++;
    return this.#serial;
  }

  /** By which something that is no plain value is compared: the same for the same thing alone. */
  nameOf(thing: object): string {
    const name = this.#names.get(thing) ?? `thing ${this.serial()}`;
    this.#names.set(thing, name);
    return name;
  }

  find(stage: string, key: string): Answer | undefined {
    const id = `${stage}\n${key}`;
    const found = this.#kept.get(id);
    if (found === undefined) return undefined;
    this.#kept.delete(id);
    this.#kept.set(id, found);
    return found.answer;
  }

  /** All kept answers of a stage. */
  of(stage: string): readonly Answer[] {
    return [...this.#kept.values()].filter((one) => one.stage === stage).map(({ answer }) => answer);
  }

  keep(stage: string, key: string, answer: Answer): void {
    const id = `${stage}\n${key}`;
    this.#drop(id);
    const bytes = "value" in answer.outcome ? bytesOf(answer.outcome.value) : 0;
    this.#kept.set(id, { stage, answer, bytes });
    this.#bytes += bytes;
    const own: string[] = [];
    for (const [one, kept] of this.#kept) if (kept.stage === stage) own.push(one);
    for (const old of own.slice(0, -MOST_ANSWERS)) this.#drop(old);
    // Those that were dropped are not met again, and none is added.
    for (const old of this.#kept.keys()) {
      if (this.#bytes <= MOST_BYTES || old === id) break;
      this.#drop(old);
    }
  }

  /**
   * Waits for a run that is under way, or starts it; its answer is kept.
   *
   * @param signal of the one who waits: the run itself is stopped when all who wait for it have gone
   */
  share(
    { stage, key, by }: Shared,
    run: (signal: AbortSignal) => Promise<Answer>,
    signal: AbortSignal | undefined,
  ): Promise<Answer> {
    const id = `${stage}\n${canonicalText(by)}\n${key}`;
    const known = this.#runs.get(id);
    if (known !== undefined) return known.wait(signal);
    const own = new SharedRun<Answer>(
      async (stopped) => {
        const answer = await run(stopped);
        if (!stopped.aborted) this.keep(stage, key, answer);
        return answer;
      },
      () => {
        if (this.#runs.get(id) === own) this.#runs.delete(id);
      },
    );
    this.#runs.set(id, own);
    return own.wait(signal);
  }

  #drop(id: string): void {
    this.#bytes -= this.#kept.get(id)?.bytes ?? 0;
    this.#kept.delete(id);
  }
}

/** Bytes of the arrays in a mesh or a picture, or in an answer that holds one. */
function bytesOf(value: unknown, depth = 2): number {
  if (ArrayBuffer.isView(value)) return value.byteLength;
  if (depth === 0 || typeof value !== "object" || value === null) return 0;
  return Object.values(value).reduce((sum: number, inner) => sum + bytesOf(inner, depth - 1), 0);
}
