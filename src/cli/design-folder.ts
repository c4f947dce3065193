/**
 * The folder of a design on the command line, where the files that it names are.
 */
import { dirname } from "node:path";
import { fileSource, pathsOfFiles } from "../disk/file-source.js";
import { STDIN } from "./files.js";

/** Reads the files beside a design; one from standard input names files from the current folder. */
export function filesBeside(design: string): (name: string) => Uint8Array {
  return fileSource(folderOf(design));
}

/** Where the files that a design names are: name → path; those that lead to nothing are left out. */
export function pathsBeside(names: readonly string[], design: string): ReadonlyMap<string, string> {
  return pathsOfFiles(names, folderOf(design));
}

function folderOf(design: string): string {
  return design === STDIN ? "." : dirname(design);
}
