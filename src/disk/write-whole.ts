/**
 * Writes a file whole or not at all: beside its place first, flushed to the disk, then put there by its name. A program that is
 * killed leaves what stood there, or what was to stand there.
 */
import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeSync } from "node:fs";
import { dirname } from "node:path";
import { outputError } from "./output-errors.js";
import { temporaryBeside } from "./temporary-files.js";

/**
 * @param chunks each is done with before the next is asked for
 * @throws AnnuletError `output-failed`, and then nothing has changed
 */
export function writeWhole(path: string, chunks: Iterable<Uint8Array>): void {
  const temporary = temporaryBeside(path);
  try {
    writeFlushed(temporary, chunks);
    renameSync(temporary, path);
    flushFolder(dirname(path));
  } catch (cause) {
    rmSync(temporary, { force: true });
    throw outputError("output-failed", path, `${path} cannot be written`, cause, []);
  }
}

function writeFlushed(path: string, chunks: Iterable<Uint8Array>): void {
  const file = openSync(path, "wx");
  try {
    for (const chunk of chunks) writeAll(file, chunk);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** The system may take fewer bytes at once than it is given. */
export function writeAll(file: number, bytes: Uint8Array): void {
  let at = 0;
  while (at < bytes.length) at += writeSync(file, bytes, at);
}

/** Asks the system to have the folder's new entries on the disk. Some file systems cannot do that to folders. */
export function flushFolder(folder: string): void {
  try {
    const handle = openSync(folder, "r");
    try {
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
  } catch {
    // The files themselves are flushed; only the moment of their names is the system's.
  }
}
