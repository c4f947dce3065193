/**
 * Loads the SVG files that a design names.
 */
import type { Warn } from "../../errors.js";
import { asText, type FileSource, loadFile } from "../../files.js";
import type { Drawing } from "./drawing.js";
import { readSvg } from "./read.js";

/** What a region says of its art. */
interface SvgRegion {
  readonly svg?: string | undefined;
}

/**
 * The drawings of all regions, by file name; each file is read once.
 *
 * @throws AnnuletError `svg-file-missing`, `svg-file-unreadable`, what the source throws, and as `readSvg`
 */
export async function loadDrawings(
  regions: readonly SvgRegion[],
  files: FileSource,
  warn: Warn,
): Promise<ReadonlyMap<string, Drawing>> {
  const drawings = new Map<string, Drawing>();
  for (const [i, { svg: name }] of regions.entries()) {
    if (name === undefined || drawings.has(name)) continue;
    const where = `pattern.regions[${i}].svg`;
    drawings.set(
      name,
      readSvg(await loadFile({ name, where, kind: "svg", hint: HINT }, files, asText), name, where, warn),
    );
  }
  return drawings;
}

const HINT = "hand it to build as files, name → text; the command line looks beside the design";
