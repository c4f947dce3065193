/**
 * What a file format is: a plain value, so that users can add their own beside the built-in ones.
 */
import type { Mesh } from "../mesh/mesh.js";

export interface EncodeOptions {
  /** The design's name, written where the format has room for one. Control characters become spaces. */
  readonly name: string;
}

export interface Format {
  /** Stable, kebab-case. */
  readonly name: string;
  /** Endings it goes by, lower case, with the dot. */
  readonly extensions: readonly string[];
  /** How a reader of the file learns the unit, in words. */
  readonly unit: string;
  /**
   * The file's bytes: the same mesh and name give the same bytes.
   *
   * @throws AnnuletError `mesh-malformed` when a coordinate or an index cannot be written
   */
  encode(mesh: Mesh, options: EncodeOptions): Uint8Array;
}
