/**
 * What a file format is: a plain value, so that users can add their own beside the built-in ones.
 */
import type { Point3 } from "../../base/math/point.js";
import type { Mesh } from "../../mesh/mesh.js";

/** What a file says beside the mesh. */
export interface EncodeOptions {
  /** The design's name, written where the format has room for one. Control characters become spaces. */
  readonly name: string;
  /** What it is made of, for formats that show it. Default none is named; previews then show plain silver grey. */
  readonly material?: FileMaterial;
  /** A picture for formats that carry one, as the bytes of a PNG. Default none. */
  readonly thumbnail?: Uint8Array;
}

/** The material as a file tells it. */
export interface FileMaterial {
  readonly name: string;
  /** Linear red, green, blue, 0 to 1: the reflectance of a metal, the colour of anything else. */
  readonly colour: Point3;
  readonly metal: boolean;
}

/** A file's bytes, piece by piece. A chunk holds until the next is asked for: writers use one buffer again and again. */
export type Chunks = Iterable<Uint8Array> | AsyncIterable<Uint8Array>;

/** A file format. */
export interface Format {
  /** Stable, kebab-case. */
  readonly name: string;
  /** Endings it goes by, lower case, with the dot. */
  readonly extensions: readonly string[];
  /** How a reader of the file learns the unit, in words. */
  readonly unit: string;
  /** Whether it carries a picture, so that it is worth taking one. Default false. */
  readonly carriesPicture?: boolean;
  /**
   * The file's bytes in chunks: the same mesh and options give the same bytes.
   *
   * @throws AnnuletError `mesh-malformed` when a coordinate or an index cannot be written, or there is nothing where the
   *   format wants something; before the first chunk
   */
  write(mesh: Mesh, options: EncodeOptions): Chunks;
}

/**
 * A mesh as the bytes of a file, in one array of its own. To write a large file, take the chunks of `format.write` one by
 * one instead.
 *
 * @throws AnnuletError as `format.write` does
 *
 * @example
 * const { mesh, report } = await build(document, { detail: "draft" });
 * const bytes = await encodeMesh(formatForFile("ring.3mf"), mesh, { name: report.name });
 */
export async function encodeMesh(format: Format, mesh: Mesh, options: EncodeOptions): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of format.write(mesh, options)) chunks.push(chunk.slice());
  return joinChunks(chunks);
}

function joinChunks(chunks: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}
