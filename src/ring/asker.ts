/**
 * Who asks a ring, and who is told what works.
 */
import type { Piece } from "./plan.js";
import type { Progress } from "./progress.js";

/** Who asks. */
export interface Asker {
  /** Stops waiting for the answer; the work itself stops where nobody else waits for it. */
  readonly signal?: AbortSignal | undefined;
  /** Is told which stage works and what share of the whole is done. */
  readonly onProgress?: ((progress: Progress) => void) | undefined;
}

/** Is told of each stage that works, not of what is remembered. */
export type OnStage = (stage: string, piece: Piece) => void;
