/**
 * Finds the files that a design names: beside the design, in its folder or below, and nowhere else, so that a design from
 * someone else cannot make annulet read other files. Nothing is ever fetched.
 */
import { realpathSync } from "node:fs";
import { isAbsolute, join } from "node:path";
import { ART_BYTES, artLimit } from "../base/art-files.js";
import { AnnuletError } from "../base/errors.js";
import { findPackageFont, namesPackage } from "./package-fonts.js";
import { exists, leaves } from "./paths.js";
import { readFile } from "./read-file.js";

/**
 * Reads files by the names that a design gives them, for `files` of every question. Names are relative to the folder, with /
 * between; links are followed as far as they stay inside it. Fonts may come from npm packages too, and annulet's own are always
 * found.
 *
 * @param folder of the design. Default the current one
 * @throws AnnuletError when a file is asked for: `file-outside-folder`, `file-missing`, `file-is-folder`, `file-not-readable`,
 * `file-too-large` (drawings over 5 MB, images over 10 MB, fonts over 30 MB), `package-font-invalid`, `package-missing`
 *
 * @example
 * const text = await readFile("rings/samphire.json", "utf8");
 * const { mesh } = await build(text, { files: fileSource("rings") });
 */
export function fileSource(folder = "."): (name: string) => Uint8Array {
  // What has no ending of art is read as a drawing.
  return (name) => readFile(pathOf(name, folder), artLimit(name) ?? ART_BYTES.drawing, "file");
}

/** Where the files of these names are: name → path. Names that lead to nothing, or out of the folder, are left out. */
export function pathsOfFiles(names: readonly string[], folder: string): ReadonlyMap<string, string> {
  const paths = new Map<string, string>();
  for (const name of names) {
    try {
      paths.set(name, pathOf(name, folder));
    } catch (error) {
      if (!(error instanceof AnnuletError)) throw error;
    }
  }
  return paths;
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

function outside(name: string): AnnuletError {
  return new AnnuletError({
    code: "file-outside-folder",
    message: `the file ${name} lies outside the design's folder`,
    value: name,
    allowed: "a file in the design's folder or below, by a name relative to it",
    hint: "copy the file beside the design",
  });
}
