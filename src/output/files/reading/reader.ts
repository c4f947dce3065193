/**
 * What reads one kind of mesh file.
 */
import type { AnnuletError } from "../../../base/errors.js";

/** What a file holds, mm: points that are equal need not be one vertex yet. */
export interface FileMesh {
  /** x, y, z of each point; single precision where the file has no more. */
  readonly positions: Float64Array | Float32Array;
  /** Three points a triangle; undefined where each three points in turn are one. */
  readonly triangles?: Uint32Array;
  /** Stones of annulet's files, which are objects beside the metal and left out. Default 0. */
  readonly stones?: number;
}

export interface MeshReader {
  /** Endings it goes by, lower case, with the dot. */
  readonly extensions: readonly string[];
  /**
   * The mesh as the file has it.
   *
   * @throws what `broken` makes
   */
  read(bytes: Uint8Array, broken: Broken): FileMesh | Promise<FileMesh>;
}

/** The error that says what is wrong with the file. */
export type Broken = (what: string, cause?: unknown) => AnnuletError;

/**
 * Most triangles of one file: some 50 times what a rich ring has, and about 1.5 GB to check. Instances of instances can ask
 * for any number in a few bytes.
 */
const MOST_TRIANGLES = 10_000_000;

/** @throws what `broken` makes when there are more triangles than are read */
export function requireFewTriangles(triangles: number, broken: Broken): void {
  if (triangles > MOST_TRIANGLES) throw broken(`it has more than ${MOST_TRIANGLES} triangles, the most that are read`);
}
