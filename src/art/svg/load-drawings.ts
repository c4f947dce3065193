/**
 * Loads the SVG files that a design names.
 */
import type { Warn } from "../../base/errors.js";
import { type FileSource, loadFile } from "../../base/files.js";
import type { SvgName } from "../shapes/svg-names.js";
import type { Drawing } from "./drawing.js";
import { drawingKey } from "./drawing-key.js";

/**
 * The drawings of the files, by `drawingKey`; each file is parsed once for each part that is taken of it.
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
  const [{ readSvg }, { fileText }] = await Promise.all([import("./read-svg.js"), import("./file-text.js")]);
  for (const { name, where, take } of names) {
    const key = drawingKey({ svg: name, take });
    if (drawings.has(key)) continue;
    const text = await loadFile({ name, where, kind: "svg", hint: HINT }, files, (content) => fileText(content, where));
    drawings.set(key, readSvg(text, name, where, warn, take));
  }
  return drawings;
}

const HINT = "hand it to build as files, name → text; the command line looks beside the design";
