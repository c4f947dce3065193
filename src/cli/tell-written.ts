/**
 * Tells of the files that a command has written.
 */
import { showBytes } from "../disk/read-file.js";
import { type Io, print, printJson, type say } from "./io.js";
import type { WrittenFile } from "./output-files.js";

/** A line for each file, as data or, where other data is printed, as talk. */
export function tellWritten(io: Io, written: readonly WrittenFile[], tell: typeof print | typeof say = print): void {
  for (const { path, size } of written) tell(io, `written: ${path} (${showBytes(size)})`);
}

/** The files as JSON: where they are, how large, their digests. */
export function printWritten(io: Io, written: readonly WrittenFile[], more: object = {}): void {
  printJson(io, { ...more, files: written.map(({ path, size, sha256 }) => ({ path, bytes: size, sha256 })) });
}
