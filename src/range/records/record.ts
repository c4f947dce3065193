/**
 * The record of a variant: what was made of which design. It is written last, so where it stands its files stand too.
 */
import type { KnownFigures } from "../figures/known-figures.js";

/** Version of records. */
export const RECORD_VERSION = 1;

/** A file of a variant. */
export interface RecordedFile {
  /** In the range's folder, with /. */
  readonly path: string;
  readonly bytes: number;
  /** SHA-256 (FIPS 180-4), 64 hexadecimal digits. */
  readonly sha256: string;
}

/** Figures of a made ring, as tables show them. Lengths in mm, weights in g. */
export interface MadeFigures {
  readonly circumference: number;
  readonly diameter: number;
  readonly thickness: number;
  readonly bandWidth: number;
  readonly repeats: number | null;
  readonly rows: number | null;
  readonly tileWidth: number | null;
  readonly tileHeight: number | null;
  /** 1 is none. */
  readonly stretch: number | null;
  readonly beads: number;
  /** Least and largest spacing over diameter of all runs; null without beads. */
  readonly beadRatioMin: number | null;
  readonly beadRatioMax: number | null;
  readonly stones: number;
  readonly carats: number;
  readonly volume: number;
  readonly weight: number;
  readonly material: string;
  /** The digits after the point that published densities allow the weight. */
  readonly weightDecimals: number;
  readonly triangles: number;
  /** Codes of warnings, each once, with how often it came. */
  readonly warnings: Readonly<Record<string, number>>;
}

interface RecordHead {
  readonly record: typeof RECORD_VERSION;
  readonly name: string;
  /** Digest of all that the variant follows from, before it is planned: where it is the same, so is everything. */
  readonly source: string;
}

/** What was made. */
export interface MadeRecord extends RecordHead {
  readonly kind: "made";
  /** Digest of the canonical design, of the files that it names, of what is written, and of the tool's version. */
  readonly key: string;
  /** SHA-256 of the canonical design. */
  readonly design: string;
  readonly files: readonly RecordedFile[];
  readonly figures: MadeFigures;
}

/** What was not, since a filter or the family leaves it out. */
export interface LeftOutRecord extends RecordHead {
  readonly kind: "left-out";
  readonly why: string;
  readonly figures: KnownFigures;
}

export type VariantRecord = MadeRecord | LeftOutRecord;
