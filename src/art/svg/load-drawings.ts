/**
 * Loads the SVG files that a design names.
 */
import type { Warn } from "../../base/errors.js";
import { asText, type FileSource, loadFile } from "../../base/files.js";
import type { SvgName } from "../shapes/svg-names.js";
import type { Drawing } from "./drawing.js";

/**
 * The drawings of the files, by name; each file is read once.
 *
 * @throws AnnuletError `svg-file-missing`, `svg-file-unreadable`, what the source throws, and as `readSvg`
 */
export async function loadDrawings(
  names: readonly SvgName[],
  files: FileSource,
  warn: Warn,
): Promise<ReadonlyMap<string, Drawing>> {
  const drawings = new Map<string, Drawing>();
  if (names.length === 0) return drawings;
  // The reader of XML is loaded by those alone who have a file to read.
  const { readSvg } = await import("./read-svg.js");
  for (const { name, where } of names) {
    if (drawings.has(name)) continue;
    const text = await loadFile({ name, where, kind: "svg", hint: HINT }, files, asText);
    drawings.set(name, readSvg(text, name, where, warn));
  }
  return drawings;
}

const HINT = "hand it to build as files, name → text; the command line looks beside the design";
