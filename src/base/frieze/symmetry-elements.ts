/**
 * Where a frieze group's mirrors, glides and two-fold centres stand in the tile, and a fundamental region of it.
 *
 * Both follow from the operations: x′ = −x + s leaves x = s / 2 alone, and with a whole tile added s / 2 + ½ too.
 */
import type { FriezeGroup, TileOperation } from "./symmetry.js";

/** The elements of one tile; x in tile widths, from 0 up to but without 1. */
export interface SymmetryElements {
  /** x of the mirrors across the band. */
  readonly mirrors: readonly number[];
  /** What the middle line is. */
  readonly middle: "mirror" | "glide" | "none";
  /** x of the two-fold centres, all on the middle line. */
  readonly centres: readonly number[];
  readonly region: FundamentalRegion;
}

/** A box whose images under the group cover the strip once. */
export interface FundamentalRegion {
  /** Tile widths. */
  readonly x: readonly [from: number, to: number];
  /** Tile heights, 0 on the middle line, ± ½ at the edges. */
  readonly y: readonly [from: number, to: number];
}

/** Half a tile. */
const HALF = 0.5;

/** The elements of a group. */
export function symmetryElements({ operations }: FriezeGroup): SymmetryElements {
  const along = operations.find(({ flipX, flipY }) => flipY && !flipX);
  const middle = along === undefined ? "none" : along.shift === 0 ? "mirror" : "glide";
  const mirrors = fixedPlaces(operations.filter(({ flipX, flipY }) => flipX && !flipY));
  // A mirror along the band halves the tile's height, and so does a glide where mirrors across halve its width already.
  const halfHigh = middle === "mirror" || operations.length > 2;
  const halfWide = operations.length > (halfHigh ? 2 : 1);
  return {
    mirrors,
    middle,
    centres: fixedPlaces(operations.filter(({ flipX, flipY }) => flipX && flipY)),
    region: { x: [0, halfWide ? HALF : 1], y: [halfHigh ? 0 : -HALF, HALF] },
  };
}

function fixedPlaces(operations: readonly TileOperation[]): number[] {
  return operations.flatMap(({ shift }) => [shift / 2, shift / 2 + HALF]);
}
