/**
 * The design of a command line, and where its outputs go: none of them in place of a file that the design is made of.
 */
import { AnnuletError, readDesign } from "../index.js";
import { namedFiles } from "../toolbox/index.js";
import { loadDesign } from "./design-file.js";
import { pathsOfFiles } from "./design-folder.js";
import { STDIN } from "./files.js";
import type { Io } from "./io.js";
import { checkTargets, keepFiles, type Target } from "./targets.js";

export interface OpenedDesign {
  /** Of the document, left to the library to read, so that errors have line and column. */
  readonly text: string;
  readonly targets: readonly Target[];
}

/**
 * Checks the outputs, then reads the design.
 *
 * @param path of the design; - for standard input
 * @throws AnnuletError those of `checkTargets`, `loadDesign` and `keepFilesOf`
 */
export async function openDesign(path: string, outputs: readonly string[], io: Io): Promise<OpenedDesign> {
  const targets = await checkTargets(outputs, sourceOf(path, io));
  const text = await loadDesign(path, io);
  keepFilesOf(text, path, targets);
  return { text, targets };
}

/** What no output may replace: a path, or the open file that standard input comes from. */
export function sourceOf(path: string, io: Io): string | number | undefined {
  return path === STDIN ? io.stdin.fd : path;
}

/**
 * Refuses targets that are files which the design names.
 *
 * @throws AnnuletError `output-is-input`
 */
export function keepFilesOf(text: string, path: string, targets: readonly Target[]): void {
  if (targets.some(({ mode }) => mode !== undefined)) keepFiles(targets, pathsOfFiles(namesIn(text), path));
}

/** The files that a document names. None for a document with errors: nothing is made of it, and its reader tells of them. */
export function namesIn(text: string): readonly string[] {
  try {
    return namedFiles(readDesign(text));
  } catch (error) {
    if (error instanceof AnnuletError) return [];
    throw error;
  }
}
