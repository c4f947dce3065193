/**
 * Answers questions about one design: takes what is remembered and lets stages work out the rest.
 */

import { canonicalText } from "../base/canonical.js";
import { pause } from "../base/pause.js";
import { readDesign } from "../design/read.js";
import type { Design } from "../design/schema.js";
import type { Answer, AnswerStore } from "./answer-store.js";
import type { RingOptions } from "./answers.js";
import { attempt } from "./attempt.js";
import { Pieces } from "./pieces.js";
import type { Node, Piece } from "./plan.js";
import { type Progress, tellerOf } from "./progress.js";
import type { StageName } from "./stage.js";
import { type OptionText, type Told, Walk } from "./walk.js";

/** Who asks. */
export interface Asker {
  /** Stops waiting for the answer; the work itself stops where nobody else waits for it. */
  readonly signal?: AbortSignal | undefined;
  /** Is told which stage works and what share of the whole is done. */
  readonly onProgress?: ((progress: Progress) => void) | undefined;
}

/** Is told of each stage that works, not of what is remembered. */
export type OnStage = (stage: string, piece: Piece) => void;

export class Engine {
  readonly #option: RingOptions;
  readonly #store: AnswerStore;
  readonly #onStage: OnStage | undefined;
  readonly #optionText: OptionText;
  /** Milliseconds that reading the document took. */
  readonly #ms: number;
  /** What the document came to: it is read at once, so that it may change afterwards. */
  readonly #read: { readonly pieces: Pieces; readonly design: Design } | { readonly error: unknown };

  /** Never throws for what is wrong in the document: each question does. */
  constructor(document: unknown, option: RingOptions, store: AnswerStore, onStage?: OnStage) {
    this.#option = option;
    this.#store = store;
    this.#onStage = onStage;
    this.#optionText = optionTexts(store);
    const start = performance.now();
    try {
      const design = readDesign(document);
      this.#read = { pieces: new Pieces(design), design };
    } catch (error) {
      this.#read = { error };
    }
    this.#ms = performance.now() - start;
  }

  /** Whether the document could be read. */
  get valid(): boolean {
    return !("error" in this.#read);
  }

  /** @throws AnnuletError with everything that is wrong in the document */
  get design(): Design {
    if ("error" in this.#read) throw this.#read.error;
    return this.#read.design;
  }

  /**
   * Options are checked before any work begins.
   *
   * @throws what a stage throws; an AnnuletError takes the warnings raised so far with it
   */
  async ask<Name extends StageName>(
    names: readonly Name[],
    chosen: Partial<RingOptions>,
    { signal, onProgress }: Asker,
  ): Promise<Told<Name>> {
    const walk = this.#walk(names, chosen);
    for (const node of walk.order.filter(checksOptions)) {
      walk.take(node, this.#remembered(walk, node) ?? this.#slice(walk, node));
    }
    onProgress?.({ stage: "document", share: 0 });
    await pause();
    signal?.throwIfAborted();
    const tell = tellerOf(walk.order, onProgress);
    for (const node of walk.order) {
      const answer = this.#try(walk, node, () => this.#remembered(walk, node) ?? this.#share(walk, node, signal, tell));
      walk.take(node, answer instanceof Promise ? await answer : answer);
    }
    return this.#told(walk);
  }

  /** The same at once, of stages that wait for nothing. */
  askNow<Name extends StageName>(names: readonly Name[], chosen: Partial<RingOptions> = {}): Told<Name> {
    const walk = this.#walk(names, chosen);
    for (const node of walk.order) {
      const answer = this.#try(walk, node, () => this.#remembered(walk, node) ?? this.#work(walk, node, NEVER));
      if (answer instanceof Promise) throw new Error(`${node.name} has to be waited for`);
      this.#store.keep(node.name, walk.key(node), answer);
      walk.take(node, answer);
    }
    return this.#told(walk);
  }

  #walk<Name extends StageName>(names: readonly Name[], chosen: Partial<RingOptions>): Walk<Name> {
    if ("error" in this.#read) throw this.#read.error;
    const told = Object.entries(chosen).filter(([, value]) => value !== undefined);
    const option: RingOptions = { ...this.#option, ...Object.fromEntries(told) };
    return new Walk(names, option, this.#read.pieces, this.#optionText);
  }

  #told<Name extends StageName>(walk: Walk<Name>): Told<Name> {
    const told = walk.told();
    return { ...told, timings: { document: this.#ms, ...told.timings } };
  }

  #remembered<Name extends StageName>(walk: Walk<Name>, node: Node): Answer | undefined {
    return this.#store.find(node.name, walk.key(node));
  }

  /** What goes wrong before a stage works, since its design cannot be, is said as if the stage did. */
  #try<Name extends StageName, Result>(walk: Walk<Name>, node: Node, run: () => Result): Result {
    try {
      return run();
    } catch (error) {
      throw walk.failure(error, node.piece);
    }
  }

  #share<Name extends StageName>(
    walk: Walk<Name>,
    node: Node,
    signal: AbortSignal | undefined,
    tell: (node: Node) => void,
  ): Answer | Promise<Answer> {
    if (node.stage.kind === "slice") return this.#slice(walk, node);
    tell(node);
    const run = async (stopped: AbortSignal) => {
      await pause();
      stopped.throwIfAborted();
      return this.#work(walk, node, stopped);
    };
    return this.#store.share(node.name, walk.key(node), run, signal);
  }

  #slice<Name extends StageName>(walk: Walk<Name>, node: Node): Answer {
    const answer = this.#work(walk, node, NEVER);
    if (answer instanceof Promise) throw new Error(`${node.name} is a slice and has to be waited for`);
    this.#store.keep(node.name, walk.key(node), answer);
    return answer;
  }

  #work<Name extends StageName>(walk: Walk<Name>, node: Node, signal: AbortSignal): Answer | Promise<Answer> {
    this.#onStage?.(node.name, node.piece);
    return attempt(node, walk.given(node), signal, this.#store);
  }
}

/** Whether a stage takes an option as it is: a slice of options, and of the design at most. */
function checksOptions({ stage: { kind }, reads, piece }: Node): boolean {
  if (kind !== "slice" || piece === "cast") return false;
  return reads.every(({ node }) => node === undefined) && reads.some(({ read }) => read.startsWith("option."));
}

/** The signal of what is over at once. */
const NEVER = new AbortController().signal;

/**
 * Kernels are compared by what they are, files by asking for them again in each ring, all other options by their values.
 */
function optionTexts(store: AnswerStore): OptionText {
  const files = `files ${store.serial()}`;
  return (name, value) => {
    if (name === "files") return files;
    return name === "kernel" ? store.nameOf(value as object) : canonicalText(value);
  };
}
