/**
 * What a page and its worker say to each other about rings.
 */
import type { PlainError } from "../base/errors/plain-error.js";
import type { FileContent } from "../base/files.js";
import type { Limits } from "../base/limits.js";
import type { WasmPlaces } from "../base/wasm-places.js";
import type { ShadingOptions } from "../output/files/buffers.js";
import type { PieceAsking, PrintAsking, Ring } from "../ring/open-ring.js";
import type { Progress } from "../ring/progress.js";
import type { KernelName } from "../union/kernels/catalogue.js";

/** The questions of a ring that a worker answers. A studio takes pictures one after the other and stays in its thread. */
export type Question = Exclude<keyof Ring, "change" | "studio">;

/** Every question, with which of its arguments says who asks; `design` has none. */
export const ASKER_AT: Readonly<Record<Question | Extra, number>> = {
  design: 0,
  size: 0,
  fit: 0,
  profile: 0,
  beads: 0,
  stones: 0,
  tile: 1,
  solid: 0,
  warnings: 0,
  make: 0,
  report: 0,
  partAt: 1,
  partLines: 1,
  check: 0,
  allowances: 0,
  weights: 0,
  sprue: 0,
  printFigures: 0,
  sheet: 0,
  picture: 1,
  buffers: 0,
  file: 1,
};

/** Questions that a ring in a worker answers beside those of every ring. */
export type Extra = "buffers" | "file";

/** Which piece is shown, how fine, and where it is shaded sharp. */
export interface BuffersAsking extends PieceAsking, ShadingOptions {}

/** Which piece is written. */
export type FileAsking = PrintAsking;

/** What a ring is opened with, as it is posted. */
export interface PostedSetup {
  /** Files by name, or that the page is asked for each. */
  readonly files?: Readonly<Record<string, string | Uint8Array>> | "page" | undefined;
  readonly kernel?: KernelName | undefined;
  readonly wasm?: WasmPlaces | undefined;
  readonly maxBeads?: number | undefined;
  readonly decimate?: number | undefined;
  readonly limits?: Partial<Limits> | undefined;
  /** Whether the page wants to hear of stages: what nobody hears is not posted. */
  readonly stages?: boolean | undefined;
}

/** What came of a question. */
export type Answered = { readonly value: unknown } | { readonly error: PlainError };

/** What the worker tells and asks while it works. */
export interface Page {
  progress(question: number, progress: Progress): void;
  stage(ring: number, stage: string, piece: string): void;
  file(ring: number, name: string): FileContent | Promise<FileContent>;
}

/** The worker, as its page sees it. Rings and questions have numbers that the page gives. */
export interface RingWorker {
  /** Who is told of what goes on. */
  hear(page: Page): void;
  open(ring: number, document: unknown, setup: PostedSetup): void;
  /** A ring of another document; what is undefined in the setup stays as it was. */
  change(from: number, ring: number, document: unknown, setup: PostedSetup | undefined): void;
  close(ring: number): void;
  /** @param hears whether the page wants to hear of progress */
  ask(
    ring: number,
    question: number,
    name: Question | Extra,
    given: readonly unknown[],
    hears: boolean,
  ): Promise<Answered>;
  /** Ends a question that nobody waits for any more. */
  stop(question: number): void;
}
