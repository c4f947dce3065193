/**
 * What the document says of casting, with any of it left out, and how much may shrink and be taken off.
 */

/** Shrinkages that are taken, %. Published figures lie between 1 and 2.5; the rest is room for what nobody published. */
export const SHRINKAGE_RANGE = { min: -5, max: 20 } as const;

/** Most that finishing takes off a face, mm: ten times the most that a casting house names. Chosen. */
export const MOST_FINISHING = 1;

/** Linear shrinkage in %, the same in all directions or one along the finger axis, one across. */
export type Shrinkage = number | { readonly axial: number; readonly radial: number };

/** Metal that finishing takes off, mm off each face: the same everywhere or its own for each group of faces. */
export type FinishingSpec = number | { readonly bore?: number; readonly rails?: number; readonly relief?: number };

/** What the document says; anything left out is 0. */
export interface CastingSpec {
  /** From pattern to casting, %. */
  readonly shrinkage?: Shrinkage;
  /** From printed file to cured pattern, %. Below 0 where it grows. */
  readonly cure?: Shrinkage;
  readonly finishing?: FinishingSpec;
}
