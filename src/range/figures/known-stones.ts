/**
 * The stones of a ring before it is made: placed on the flat pattern as the made ring's are, so counted and weighed alike.
 */
import { canonicalText } from "../../base/canonical.js";
import type { FileSource } from "../../base/files.js";
import type { Design } from "../../design/schema.js";
import { openInside } from "../../ring/open-ring.js";
import { reportStones } from "../../stones/stone-report.js";

/** How many, and their weight by the published formulas. */
export interface StoneFigures {
  readonly stones: number;
  readonly carats: number;
  /** g */
  readonly stoneWeight: number;
}

const NONE: StoneFigures = { stones: 0, carats: 0, stoneWeight: 0 };

/** Rings that are remembered: those that differ in their material alone come one after the other. Chosen. */
const MOST = 64;

export class KnownStones {
  readonly #files: FileSource;
  readonly #known = new Map<string, StoneFigures>();

  /** @param files that the designs name */
  constructor(files: FileSource) {
    this.#files = files;
  }

  /** @throws AnnuletError what is wrong with the stones, or with the pattern in which they stand; the signal's reason */
  async of(design: Design, signal: AbortSignal | undefined): Promise<StoneFigures> {
    if (design.stones.length === 0) return NONE;
    const key = canonicalText({ ...design, name: "", material: "" });
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const { answers } = await openInside(design, { files: this.#files }).ask(["stones"], { signal });
    const report = reportStones(answers.stones);
    const found =
      report === undefined ? NONE : { stones: report.count, carats: report.carats, stoneWeight: report.grams };
    if (this.#known.size >= MOST) this.#known.clear();
    this.#known.set(key, found);
    return found;
  }
}
