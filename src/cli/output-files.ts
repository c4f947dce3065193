/**
 * Writes output files whole or not at all: all of them beside their targets first, flushed to the disk, then renamed.
 */
import { randomBytes } from "node:crypto";
import {
  accessSync,
  closeSync,
  constants,
  fchmodSync,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  type Stats,
  statSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { AnnuletError, type Chunks, type Problem } from "../index.js";
import { outputError } from "./output-errors.js";
import { type Caught, holdSignals, Interrupted } from "./signals.js";

/** Where a file will go. */
export interface Target {
  /** As the user named it. */
  readonly path: string;
  /** The file itself, behind any links. */
  readonly file: string;
  /** Permission bits of the file that stands there, which the new one takes over. */
  readonly mode: number | undefined;
}

/** A target and what goes there; the bytes are made when their turn comes, chunk by chunk. */
export interface Output {
  readonly target: Target;
  readonly chunks: () => Chunks;
}

export interface WrittenFile {
  readonly path: string;
  /** Bytes. */
  readonly size: number;
}

/**
 * Checks that files can be written at all paths, and says everything that is in the way.
 *
 * @param source the input file, which no output may replace
 * @throws AnnuletError `output-folder-missing`, `output-not-writable`, `output-is-folder`, `output-twice`,
 * `output-is-input`, `output-to-stdout`
 */
export async function checkTargets(paths: readonly string[], source?: string): Promise<readonly Target[]> {
  const problems: Problem[] = [];
  const targets: Target[] = [];
  await holdSignals(async () => {
    for (const path of paths) {
      try {
        const target = findTarget(path);
        const twin = targets.find((other) => other.file === target.file);
        if (twin) throw outputError("output-twice", path, `${path} is asked for twice.`);
        if (source !== undefined && isSameFile(source, target.file)) {
          throw outputError("output-is-input", path, `${path} is the design itself: it would be lost.`);
        }
        targets.push(target);
      } catch (error) {
        if (!(error instanceof AnnuletError)) throw error;
        problems.push(...error.problems);
      }
    }
  });
  if (problems.length > 0) throw new AnnuletError(problems);
  return targets;
}

/**
 * Writes all outputs. Until all are on the disk, nothing replaces a target; Ctrl-C until then leaves all as it was.
 *
 * @throws AnnuletError `output-failed`, which says which files were written; Interrupted
 */
export function writeOutputs(outputs: readonly Output[]): Promise<readonly WrittenFile[]> {
  return holdSignals(async (caught) => {
    const waiting: string[] = [];
    try {
      const written = await writeBeside(outputs, waiting, caught);
      renameAll(outputs, waiting);
      return written;
    } finally {
      for (const file of waiting) rmSync(file, { force: true });
    }
  });
}

/** Writes each output to a temporary file; `waiting` holds the names of those that exist. */
async function writeBeside(outputs: readonly Output[], waiting: string[], caught: Caught): Promise<WrittenFile[]> {
  const written: WrittenFile[] = [];
  for (const { target, chunks } of outputs) {
    const temporary = temporaryBeside(target.file);
    const file = attempt(target, () => openSync(temporary, "wx"));
    waiting.push(temporary);
    let size = 0;
    try {
      for await (const chunk of chunks()) {
        attempt(target, () => writeAll(file, chunk));
        size += chunk.length;
        await stopIfCaught(caught);
      }
      attempt(target, () => {
        if (target.mode !== undefined) fchmodSync(file, target.mode);
        fsyncSync(file);
      });
    } finally {
      closeSync(file);
    }
    await stopIfCaught(caught);
    written.push({ path: target.path, size });
  }
  return written;
}

/** Asks the system for something; says which file it was for where the system refuses. */
function attempt<Result>(target: Target, ask: () => Result): Result {
  try {
    return ask();
  } catch (cause) {
    throw outputError("output-failed", target.path, `${target.path} cannot be written`, cause, []);
  }
}

/** The system may take fewer bytes at once than it is given. */
function writeAll(file: number, bytes: Uint8Array): void {
  let at = 0;
  while (at < bytes.length) at += writeSync(file, bytes, at);
}

async function stopIfCaught(caught: Caught): Promise<void> {
  const signal = await caught();
  if (signal !== undefined) throw new Interrupted(signal);
}

function renameAll(outputs: readonly Output[], waiting: string[]): void {
  const done: string[] = [];
  for (const { target } of outputs) {
    try {
      renameSync(waiting[0], target.file);
    } catch (cause) {
      throw outputError("output-failed", target.path, `${target.path} cannot be put in its place`, cause, done);
    }
    waiting.shift();
    done.push(target.path);
  }
}

/** Finds the file that a path means and tries whether one can be made beside it. */
function findTarget(path: string): Target {
  if (path === "-") {
    throw outputError("output-to-stdout", path, "Meshes are written to files only: name one instead of -.");
  }
  const standing = statOf(path);
  if (standing?.isDirectory()) throw outputError("output-is-folder", path, `${path} is a folder, not a file.`);
  if (standing && !standing.isFile()) {
    throw outputError("output-not-writable", path, `${path} is a device or a pipe, not a file.`);
  }
  const folder = dirname(resolve(path));
  if (!statOf(folder)?.isDirectory()) {
    throw outputError("output-folder-missing", path, `There is no folder ${folder} for ${path}. Make it first.`);
  }
  const file = standing ? realpathSync(path) : join(realpathSync(folder), basename(path));
  try {
    if (standing) accessSync(file, constants.W_OK);
    // Permission bits do not tell all: only a file that was made shows that files can be made.
    const probe = temporaryBeside(file);
    closeSync(openSync(probe, "wx"));
    rmSync(probe, { force: true });
  } catch (cause) {
    const what = standing ? path : `the folder ${folder}`;
    throw outputError("output-not-writable", path, `Cannot write to ${what}`, cause);
  }
  return { path, file, mode: standing ? standing.mode & PERMISSIONS : undefined };
}

/** The part of a file's mode that says who may read, write and run it. */
const PERMISSIONS = 0o777;

/** A name nobody has, in the target's folder so that a rename moves no bytes; short, as file systems limit names. */
function temporaryBeside(file: string): string {
  return join(dirname(file), `.annulet-${randomBytes(6).toString("hex")}.tmp`);
}

function statOf(path: string): Stats | undefined {
  try {
    return statSync(path);
  } catch {
    return undefined;
  }
}

function isSameFile(one: string, other: string): boolean {
  const a = statOf(one);
  const b = statOf(other);
  return a !== undefined && b !== undefined && a.ino === b.ino && a.dev === b.dev;
}
