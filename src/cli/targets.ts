/**
 * Where output files will go: whether they can be written there, and that none of them is a file of the design.
 */
import { accessSync, closeSync, constants, lstatSync, openSync, realpathSync, rmSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { outputError } from "../disk/output-errors.js";
import { isSameFile, statOf } from "../disk/same-file.js";
import { removeLeftovers, temporaryBeside } from "../disk/temporary-files.js";
import { AnnuletError, type Problem } from "../index.js";
import { holdSignals } from "./signals.js";

/** Where an output will go: to a file, or to standard output. */
export type Target = FileTarget | StreamTarget;

export interface FileTarget {
  /** As the user named it. */
  readonly path: string;
  /** The file itself, behind any links. */
  readonly file: string;
  /** Permission bits of the file that stands there, which the new one takes over; undefined where none does. */
  readonly mode: number | undefined;
}

export interface StreamTarget {
  readonly path: typeof STDOUT;
  readonly stream: NodeJS.WritableStream;
}

/** How standard output is named where a file would be. */
export const STDOUT = "-";

export function isFile(target: Target): target is FileTarget {
  return "file" in target;
}

/**
 * Checks that files can be written at all paths, and says everything that is in the way. What killed runs have left in
 * those folders is taken away.
 *
 * @param source the input file, which no output may replace: its path, or the number of the open file it is read from
 * @param stream where `-` goes. Default standard output
 * @throws AnnuletError `output-folder-missing`, `output-not-writable`, `output-is-folder`, `output-twice`,
 * `output-is-input`
 */
export async function checkTargets(
  paths: readonly string[],
  source?: string | number,
  stream: NodeJS.WritableStream = process.stdout,
): Promise<readonly Target[]> {
  const problems: Problem[] = [];
  const targets: Target[] = [];
  await holdSignals(async () => {
    for (const path of paths) {
      try {
        const target: Target = path === STDOUT ? { path, stream } : findTarget(path);
        const twin = targets.find((other) => nameOf(other) === nameOf(target));
        if (twin) throw outputError("output-twice", path, `${path} is asked for twice.`);
        if (source !== undefined && isFile(target) && isSameFile(source, target.file)) {
          throw outputError("output-is-input", path, `${path} is the design itself: it would be lost.`);
        }
        targets.push(target);
      } catch (error) {
        if (!(error instanceof AnnuletError)) throw error;
        problems.push(...error.problems);
      }
    }
    for (const folder of new Set(targets.filter(isFile).map(({ file }) => dirname(file)))) removeLeftovers(folder);
  });
  if (problems.length > 0) throw new AnnuletError(problems);
  return targets;
}

/**
 * Refuses targets that are files which a design names, by whatever name or link: the next run would build from our own
 * drawing.
 *
 * @param files name in the design → path
 * @throws AnnuletError `output-is-input`
 */
export function keepFiles(targets: readonly Target[], files: ReadonlyMap<string, string>): void {
  const problems = targets.filter(isFile).flatMap(({ path, file }): Problem[] => {
    const named = [...files].find(([, own]) => isSameFile(own, file));
    if (named === undefined) return [];
    const message = `${path} is a file that the design names: it would be lost.`;
    return [{ code: "output-is-input", message, value: path, hint: `write to a file other than ${named[0]}` }];
  });
  if (problems.length > 0) throw new AnnuletError(problems);
}

/** What tells outputs apart. */
function nameOf(target: Target): string {
  return isFile(target) ? target.file : target.path;
}

/** Finds the file that a path means and tries whether one can be made beside it. */
function findTarget(path: string): FileTarget {
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
    // Says whether the name can be one at all; that there is no such file yet is as it should be.
    else lstatSync(file, { throwIfNoEntry: false });
    // Permission bits do not tell all: only a file that was made shows that files can be made.
    const probe = temporaryBeside(file);
    closeSync(openSync(probe, "wx"));
    rmSync(probe, { force: true });
  } catch (cause) {
    const what = standing ? path : `${path} in the folder ${folder}`;
    throw outputError("output-not-writable", path, `Cannot write to ${what}`, cause);
  }
  return { path, file, mode: standing ? standing.mode & PERMISSIONS : undefined };
}

/** The part of a file's mode that says who may read, write and run it. */
const PERMISSIONS = 0o777;
