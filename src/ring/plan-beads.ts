/**
 * The bead runs alone, without building the ring: what makers choose pitches and sizes from.
 */
import type { Warn } from "../base/errors.js";
import type { FileSource } from "../base/files.js";
import type { Limits } from "../base/limits.js";
import type { WasmPlaces } from "../base/wasm-places.js";
import type { BeadRunReport } from "../beads/bead-report.js";
import { openInside } from "./open-ring.js";
import { readQuestion } from "./options/questions.js";

/** What beads are placed with. */
export interface PlanBeadsOptions {
  /** Where the WebAssembly file of lettering is, as an address or bytes, where it does not lie beside the library. */
  readonly wasm?: WasmPlaces | undefined;
  /** Most beads that are placed round the band. Default 20 000. */
  readonly maxBeads?: number | undefined;
  /** The files that the design names, SVG drawings: name → text, or a function that gives one. Default: none. */
  readonly files?: FileSource | undefined;
  /**
   * What it may cost: seconds and corners, beyond which AnnuletError `too-long` or `too-many-corners` names the part of the
   * document. Default 1 800 s, 4 million corners.
   */
  readonly limits?: Partial<Limits> | undefined;
  /** Takes the warnings of the pattern and the beads. Default: they are dropped. */
  readonly warn?: Warn | undefined;
}

/**
 * Places a design's bead runs and tells what each came to, and what it would come to with fewer or more beads.
 *
 * @param document the design document: an object, or JSON text
 * @throws AnnuletError as `build` up to the beads
 *
 * @example
 * for (const { run, count, spacing } of await planBeads(document)) console.log(run, count, spacing); // mm
 */
export async function planBeads(document: unknown, options: PlanBeadsOptions = {}): Promise<readonly BeadRunReport[]> {
  const { warn, ...setup } = readQuestion("beads", options);
  const { answers, warnings } = await openInside(document, setup).ask(["marks", "beads"]);
  if (warn !== undefined) for (const warning of warnings) warn(warning);
  return answers.beads.reports;
}
