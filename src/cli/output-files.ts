/**
 * Writes output files whole or not at all: all of them beside their targets first, flushed to the disk, then put in place
 * together. Where one cannot be put there, the others are taken back.
 */
import { createHash } from "node:crypto";
import { closeSync, fchmodSync, fsyncSync, linkSync, openSync, renameSync, rmSync } from "node:fs";
import { dirname } from "node:path";
import { outputError } from "../disk/output-errors.js";
import { temporaryBeside } from "../disk/temporary-files.js";
import { flushFolder, writeAll } from "../disk/write-whole.js";
import type { Chunks } from "../index.js";
import { type Caught, holdSignals, Interrupted } from "./signals.js";
import { type FileTarget, isFile, type Target } from "./targets.js";

/** A target and what goes there; the bytes are made when their turn comes, chunk by chunk. */
export interface Output {
  readonly target: Target;
  /** @param written the outputs before this one, in their order */
  readonly chunks: (written: readonly WrittenFile[]) => Chunks;
}

export interface WrittenFile {
  readonly path: string;
  /** Bytes. */
  readonly size: number;
  /** SHA-256 (FIPS 180-4) of its bytes, 64 hexadecimal digits. */
  readonly sha256: string;
}

/**
 * Writes all outputs. Until all are on the disk, nothing replaces a target; Ctrl-C until then leaves all as it was. What goes
 * to standard output follows when the files are in place.
 *
 * @throws AnnuletError `output-failed`, which says which files were written, if any; Interrupted
 */
export function writeOutputs(outputs: readonly Output[]): Promise<readonly WrittenFile[]> {
  return holdSignals(async (caught) => {
    const waiting: string[] = [];
    const streams: Streamed[] = [];
    try {
      const written = await writeBeside(outputs, { waiting, streams }, caught);
      putInPlace(
        outputs.flatMap(({ target }) => (isFile(target) ? [target] : [])),
        waiting,
      );
      for (const { stream, chunks } of streams) for (const chunk of chunks) await send(stream, chunk);
      return written;
    } finally {
      for (const file of waiting) rmSync(file, { force: true });
    }
  });
}

/** Bytes that are kept for a stream until the files are in place. */
interface Streamed {
  readonly stream: NodeJS.WritableStream;
  readonly chunks: readonly Uint8Array[];
}

/** Where outputs wait: the names of temporary files that exist, and what goes to streams. */
interface Waiting {
  readonly waiting: string[];
  readonly streams: Streamed[];
}

/** Writes each output to a temporary file, or keeps it for its stream. */
async function writeBeside(
  outputs: readonly Output[],
  { waiting, streams }: Waiting,
  caught: Caught,
): Promise<WrittenFile[]> {
  const written: WrittenFile[] = [];
  for (const { target, chunks } of outputs) {
    const digest = createHash("sha256");
    let size = 0;
    const take = async (put: (chunk: Uint8Array) => void) => {
      for await (const chunk of chunks(written)) {
        put(chunk);
        digest.update(chunk);
        size += chunk.length;
        await stopIfCaught(caught);
      }
    };
    if (isFile(target)) await writeTemporary(target, waiting, take);
    else {
      const kept: Uint8Array[] = [];
      await take((chunk) => kept.push(chunk.slice()));
      streams.push({ stream: target.stream, chunks: kept });
    }
    await stopIfCaught(caught);
    written.push({ path: target.path, size, sha256: digest.digest("hex") });
  }
  return written;
}

/** Takes the bytes of an output into a temporary file, flushed to the disk. */
async function writeTemporary(
  target: FileTarget,
  waiting: string[],
  take: (put: (chunk: Uint8Array) => void) => Promise<void>,
): Promise<void> {
  const temporary = temporaryBeside(target.file);
  const file = attempt(target, () => openSync(temporary, "wx"));
  waiting.push(temporary);
  try {
    await take((chunk) => attempt(target, () => writeAll(file, chunk)));
    attempt(target, () => {
      if (target.mode !== undefined) fchmodSync(file, target.mode);
      fsyncSync(file);
    });
  } finally {
    closeSync(file);
  }
}

/** Sends bytes and waits until the stream has taken them. */
function send(stream: NodeJS.WritableStream, chunk: Uint8Array): Promise<void> {
  return new Promise((resolve, reject) => {
    stream.write(chunk, (error) => (error ? reject(error) : resolve()));
  });
}

/** Asks the system for something; says which file it was for where the system refuses. */
function attempt<Result>(target: Target, ask: () => Result): Result {
  try {
    return ask();
  } catch (cause) {
    throw outputError("output-failed", target.path, `${target.path} cannot be written`, cause, []);
  }
}

async function stopIfCaught(caught: Caught): Promise<void> {
  const signal = await caught();
  if (signal !== undefined) throw new Interrupted(signal);
}

/**
 * Renames all temporary files to their targets. What stood there is kept under a second name until all are in place, so
 * that it can be put back.
 */
function putInPlace(targets: readonly FileTarget[], waiting: readonly string[]): void {
  const before: (string | undefined)[] = [];
  try {
    for (const [i, target] of targets.entries()) {
      before.push(keepOld(target));
      try {
        renameSync(waiting[i], target.file);
      } catch (cause) {
        const stay = takeBack(targets.slice(0, i), before);
        throw outputError("output-failed", target.path, `${target.path} cannot be put in its place`, cause, stay);
      }
    }
    for (const folder of new Set(targets.map(({ file }) => dirname(file)))) flushFolder(folder);
  } finally {
    for (const old of before) if (old !== undefined) rmSync(old, { force: true });
  }
}

/** A second name for the file that stands at a target; undefined where none stands there or the file system has no links. */
function keepOld({ file, mode }: FileTarget): string | undefined {
  if (mode === undefined) return undefined;
  const old = temporaryBeside(file);
  try {
    linkSync(file, old);
    return old;
  } catch {
    return undefined;
  }
}

/** Undoes the renames of these targets; returns the paths of those that could not be undone. */
function takeBack(targets: readonly FileTarget[], before: readonly (string | undefined)[]): string[] {
  return targets.flatMap(({ path, file, mode }, i) => {
    const old = before[i];
    try {
      if (old !== undefined) renameSync(old, file);
      else if (mode === undefined) rmSync(file);
      else return [path];
      return [];
    } catch {
      return [path];
    }
  });
}
