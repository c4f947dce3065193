/**
 * Finds the files that a design names: beside the design, in its folder or below, and nowhere else, so that a design from
 * someone else cannot make annulet read other files. Nothing is ever fetched.
 */
import { realpathSync } from "node:fs";
import { dirname, isAbsolute, join, relative, sep } from "node:path";
import { AnnuletError } from "../index.js";
import { readFile, STDIN } from "./files.js";

/** Largest drawing, bytes; the library's own limit on its text. */
const MAX_FILE_BYTES = 5e6;

/**
 * Reads files by the names that a design gives them. Names are relative to the design's folder, with / between; a design
 * from standard input names files from the current folder.
 *
 * @throws AnnuletError `file-outside-folder`, and those of `readFile`
 */
export function filesBeside(design: string): (name: string) => Uint8Array {
  const folder = design === STDIN ? "." : dirname(design);
  return (name) => {
    const path = join(folder, name);
    if (isAbsolute(name) || leaves(folder, path)) throw outside(name);
    // Links are followed only as far as they stay inside.
    if (exists(path) && leaves(realpathSync(folder), realpathSync(path))) throw outside(name);
    return readFile(path, MAX_FILE_BYTES);
  };
}

function leaves(folder: string, path: string): boolean {
  const way = relative(folder, path);
  return way === ".." || way.startsWith(`..${sep}`) || isAbsolute(way);
}

function exists(path: string): boolean {
  try {
    realpathSync(path);
    return true;
  } catch {
    return false;
  }
}

function outside(name: string): AnnuletError {
  return new AnnuletError({
    code: "file-outside-folder",
    message: `the file ${name} lies outside the design's folder`,
    value: name,
    allowed: "a file in the design's folder or below, by a name relative to it",
    hint: "copy the drawing beside the design",
  });
}
