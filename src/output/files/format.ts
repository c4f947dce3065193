/**
 * What a file format is: a plain value, so that users can add their own beside the built-in ones.
 */
import { AnnuletError } from "../../base/errors.js";
import { joinChunks } from "../../base/join-chunks.js";
import type { Point3 } from "../../base/math/point.js";
import { BYTES, type OptionRules, requireOptions, TEXT } from "../../base/options.js";
import type { Mesh } from "../../mesh/mesh.js";
import { requireTriples } from "../../mesh/sound.js";
import { copyStones, type FileStone, isFileStone } from "./file-stone.js";

/** What a file says beside the mesh. */
export interface EncodeOptions {
  /** The design's name, written where the format has room for one. Control characters become spaces. */
  readonly name: string;
  /** What it is made of, for formats that show it. Default none is named; previews then show plain silver grey. */
  readonly material?: FileMaterial | undefined;
  /** A picture for formats that carry one, as the bytes of a PNG. Default none. */
  readonly thumbnail?: Uint8Array | undefined;
  /** Stones beside the mesh, for formats that hold objects: each is one of its own, never united with it. Default none. */
  readonly stones?: readonly FileStone[] | undefined;
}

const RULES: OptionRules<EncodeOptions> = {
  name: { ...TEXT, needed: true },
  material: { holds: isMaterial, allowed: "{name, colour, metal}; the colour is three numbers from 0 to 1" },
  thumbnail: BYTES,
  stones: {
    holds: (value) => Array.isArray(value) && value.every(isFileStone),
    allowed: "a list of stones, as ring.make gives them",
  },
};

function isMaterial(value: unknown): boolean {
  const { name, colour, metal } = Object(value) as Partial<FileMaterial>;
  if (typeof name !== "string" || typeof metal !== "boolean") return false;
  return Array.isArray(colour) && colour.length === 3 && colour.every((share) => share >= 0 && share <= 1);
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
  readonly carriesPicture?: boolean | undefined;
  /** Whether it holds objects, so that stones can stand beside the metal. Default false. */
  readonly carriesStones?: boolean | undefined;
  /** Whether printers print all that is in it: a master's stones are left out then, unless they are asked for. Default false. */
  readonly forPrinters?: boolean | undefined;
  /**
   * The file's bytes in chunks: the same mesh and options give the same bytes.
   *
   * @throws AnnuletError `mesh-malformed` when a coordinate or an index cannot be written, or there is nothing where the
   *   format wants something; before the first chunk
   */
  write(mesh: Mesh, options: EncodeOptions): Chunks;
}

/**
 * A mesh as the bytes of a file, in one array of its own; the mesh may change afterwards. To write a large file, take the
 * chunks of `format.write` one by one instead.
 *
 * @throws AnnuletError as `format.write` and `requireOptions` do; `format-unknown`
 *
 * @example
 * const { mesh, report } = await build(document, { detail: "draft" });
 * const bytes = await encodeMesh(formatForFile("ring.3mf"), mesh, { name: report.name });
 */
export async function encodeMesh(format: Format, mesh: Mesh, options: EncodeOptions): Promise<Uint8Array> {
  requireOptions(options, RULES);
  requireTriples(mesh);
  requireFormat(format);
  const chunks: Uint8Array[] = [];
  const written: Chunks = format.write(copyOf(mesh), copyOfOptions(options));
  requireChunks(written);
  for await (const chunk of written) chunks.push(chunk.slice());
  return joinChunks(chunks);
}

function copyOf({ positions, triangles }: Mesh): Mesh {
  return { positions: positions.slice(), triangles: triangles.slice() };
}

function copyOfOptions({ name, material, thumbnail, stones }: EncodeOptions): EncodeOptions {
  return {
    name,
    ...(material === undefined ? {} : { material: { ...material, colour: [...material.colour] } }),
    ...(thumbnail === undefined ? {} : { thumbnail: Uint8Array.from(thumbnail) }),
    ...(stones === undefined ? {} : { stones: copyStones(stones) }),
  };
}

/** A caller in JavaScript may have written a format that gives anything. */
function requireChunks(written: unknown): void {
  const { [Symbol.iterator]: each, [Symbol.asyncIterator]: later } = Object(written) as Partial<
    Iterable<unknown> & AsyncIterable<unknown>
  >;
  if (typeof each === "function" || typeof later === "function") return;
  throw new AnnuletError({
    code: "format-unknown",
    message: "the format wrote no chunks",
    value: written,
    allowed: "an iterable of Uint8Arrays, at once or one after the other",
  });
}

function requireFormat(format: unknown): void {
  if (typeof (Object(format) as Partial<Format>).write === "function") return;
  throw new AnnuletError({
    code: "format-unknown",
    message: "what is given is no format",
    value: format,
    allowed: "one of `formats`, what `formatForFile` gives, or any value of the Format interface",
  });
}
