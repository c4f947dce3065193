/**
 * Finds the files that a design names: beside the design, in its folder or below, and nowhere else, so that a design from
 * someone else cannot make annulet read other files. Nothing is ever fetched.
 */
import { realpathSync } from "node:fs";
import { dirname, isAbsolute, join } from "node:path";
import { AnnuletError } from "../index.js";
import { readFile, STDIN } from "./files.js";
import { findPackageFont, namesPackage } from "./package-fonts.js";
import { exists, leaves } from "./paths.js";

/** Largest files by their endings, bytes: the library's own limits. All others are drawings. */
const LIMITS: readonly { readonly ending: RegExp; readonly bytes: number }[] = [
  { ending: /\.(ttf|otf|woff|woff2|ttc)$/i, bytes: 30e6 },
  { ending: /\.png$/i, bytes: 10e6 },
];
const MAX_DRAWING_BYTES = 5e6;

/**
 * Reads files by the names that a design gives them. Names are relative to the design's folder, with / between; a design
 * from standard input names files from the current folder. Fonts may come from npm packages too.
 *
 * @throws AnnuletError `file-outside-folder`, and those of `findPackageFont` and `readFile`
 */
export function filesBeside(design: string): (name: string) => Uint8Array {
  const folder = folderOf(design);
  return (name) => readFile(pathOf(name, folder), limitOf(name), "file");
}

/** Where the files of these names are: name → path. Names that lead to nothing, or out of the folder, are left out. */
export function pathsOfFiles(names: readonly string[], design: string): ReadonlyMap<string, string> {
  const paths = new Map<string, string>();
  for (const name of names) {
    try {
      paths.set(name, pathOf(name, folderOf(design)));
    } catch (error) {
      if (!(error instanceof AnnuletError)) throw error;
    }
  }
  return paths;
}

function folderOf(design: string): string {
  return design === STDIN ? "." : dirname(design);
}

/** @throws AnnuletError `file-outside-folder`, and those of `findPackageFont` */
function pathOf(name: string, folder: string): string {
  if (namesPackage(name)) return findPackageFont(name, folder);
  const path = join(folder, name);
  if (isAbsolute(name) || leaves(folder, path)) throw outside(name);
  // Links are followed only as far as they stay inside.
  if (exists(path) && leaves(realpathSync(folder), realpathSync(path))) throw outside(name);
  return path;
}

function limitOf(name: string): number {
  return LIMITS.find(({ ending }) => ending.test(name))?.bytes ?? MAX_DRAWING_BYTES;
}

function outside(name: string): AnnuletError {
  return new AnnuletError({
    code: "file-outside-folder",
    message: `the file ${name} lies outside the design's folder`,
    value: name,
    allowed: "a file in the design's folder or below, by a name relative to it",
    hint: "copy the file beside the design",
  });
}
