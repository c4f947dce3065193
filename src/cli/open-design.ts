/**
 * The design of a command line, and where its outputs go: none of them in place of a file that the design is made of.
 */
import { AnnuletError, readDesign } from "../index.js";
import { namedFiles } from "../toolbox/index.js";
import { type DesignDocument, loadDesign } from "./design-file.js";
import { pathsBeside } from "./design-folder.js";
import type { DesignOptions } from "./design-options.js";
import { STDIN } from "./files.js";
import type { Io } from "./io.js";
import { checkTargets, isFile, keepFiles, type Target } from "./targets.js";

export interface OpenedDesign {
  readonly document: DesignDocument;
  readonly targets: readonly Target[];
}

/**
 * Checks the outputs, then reads the design.
 *
 * @param path of the design; - for standard input
 * @param options what is put into it first
 * @throws AnnuletError those of `checkTargets`, `loadDesign` and `keepFilesOf`
 */
export async function openDesign(
  path: string,
  outputs: readonly string[],
  io: Io,
  options: DesignOptions,
): Promise<OpenedDesign> {
  const targets = await checkTargets(outputs, sourceOf(path, io), io.data);
  const document = await loadDesign(path, io, options);
  keepFilesOf(document, path, targets);
  return { document, targets };
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
export function keepFilesOf(document: DesignDocument, path: string, targets: readonly Target[]): void {
  if (targets.some((target) => isFile(target) && target.mode !== undefined))
    keepFiles(targets, pathsBeside(namesIn(document), path));
}

/** The files that a document names. None for a document with errors: nothing is made of it, and its reader tells of them. */
export function namesIn(document: DesignDocument): readonly string[] {
  try {
    return namedFiles(readDesign(document));
  } catch (error) {
    if (error instanceof AnnuletError) return [];
    throw error;
  }
}
