/**
 * Reads input files: what is wrong with a file is said before its bytes are read.
 */
import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import { AnnuletError } from "../base/errors.js";
import { joinChunks } from "../base/join-chunks.js";
import { reasonOf } from "./reason-of.js";
import { statOf } from "./same-file.js";

/** Bytes in a megabyte, as file managers count. */
const MEGABYTE = 1e6;

/** Bytes asked for at once from what has no size, such as a pipe. */
const CHUNK = 65_536;

/**
 * A file's bytes.
 *
 * @param limit largest size in bytes; a larger file is not read
 * @param kind what it may be: a pipe may never be written to, and waiting for it cannot be stopped; default either
 * @throws AnnuletError `file-missing`, `file-is-folder`, `file-not-readable`, `file-too-large`
 */
export function readFile(path: string, limit: number, kind: "file" | "file or pipe" = "file or pipe"): Uint8Array {
  const stat = kind === "file" ? statOf(path) : undefined;
  if (stat !== undefined && !stat.isFile() && !stat.isDirectory()) {
    throw new AnnuletError({ code: "file-not-readable", message: `${path} is a device or a pipe, not a file.` });
  }
  let file: number;
  try {
    file = openSync(path, "r");
  } catch (cause) {
    throw cannotRead(path, cause);
  }
  try {
    const stat = fstatSync(file);
    if (stat.isDirectory()) {
      throw new AnnuletError({ code: "file-is-folder", message: `${path} is a folder, not a file.` });
    }
    if (stat.isFile() && stat.size > limit) throw tooLarge(path, limit, stat.size);
    return readAll(file, path, limit, stat.size);
  } catch (cause) {
    throw cause instanceof AnnuletError ? cause : cannotRead(path, cause);
  } finally {
    closeSync(file);
  }
}

/**
 * Reads to the end, but no further than the limit: a device or a pipe may never end.
 *
 * @param expected bytes that come at once; 0 where that is not known
 */
function readAll(file: number, path: string, limit: number, expected: number): Uint8Array {
  const chunks: Uint8Array[] = [];
  let total = 0;
  for (;;) {
    const chunk = new Uint8Array(Math.max(CHUNK, expected - total));
    const length = readSync(file, chunk);
    if (length === 0) return joinChunks(chunks);
    total += length;
    if (total > limit) throw tooLarge(path, limit);
    chunks.push(chunk.subarray(0, length));
  }
}

/** A size in words: `84 B`, `1.2 kB`, `31.5 MB`. */
export function showBytes(bytes: number): string {
  if (bytes < 1000) return `${bytes} B`;
  return bytes < MEGABYTE ? `${(bytes / 1000).toFixed(1)} kB` : `${(bytes / MEGABYTE).toFixed(1)} MB`;
}

function cannotRead(path: string, cause: unknown): AnnuletError {
  const code = (cause as NodeJS.ErrnoException).code === "ENOENT" ? "file-missing" : "file-not-readable";
  const message = code === "file-missing" ? `There is no file ${path}.` : `Cannot read ${path}: ${reasonOf(cause)}.`;
  return new AnnuletError({ code, message }, { cause });
}

/** The error of an input that is larger than is read. */
export function tooLarge(path: string, limit: number, size?: number): AnnuletError {
  return new AnnuletError({
    code: "file-too-large",
    message: `${path} is too large${size === undefined ? "" : `: ${showBytes(size)}`}.`,
    allowed: `at most ${showBytes(limit)}`,
  });
}
