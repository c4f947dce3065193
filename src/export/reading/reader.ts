/**
 * What reads one kind of mesh file.
 */
import type { AnnuletError } from "../../errors.js";
import type { Mesh } from "../../mesh/mesh.js";

export interface MeshReader {
  /** Endings it goes by, lower case, with the dot. */
  readonly extensions: readonly string[];
  /**
   * The mesh in mm as the file has it: points that are equal need not be one vertex yet.
   *
   * @throws what `broken` makes
   */
  read(bytes: Uint8Array, broken: Broken): Mesh | Promise<Mesh>;
}

/** The error that says what is wrong with the file. */
export type Broken = (what: string, cause?: unknown) => AnnuletError;

/**
 * Most triangles of one file: some 50 times what a rich ring has, and about 1.5 GB to check. Instances of instances can ask
 * for any number in a few bytes.
 */
export const MOST_TRIANGLES = 10_000_000;

/** @throws what `broken` makes when there are more triangles than are read */
export function requireFewTriangles(triangles: number, broken: Broken): void {
  if (triangles > MOST_TRIANGLES) throw broken(`it has more than ${MOST_TRIANGLES} triangles, the most that are read`);
}
