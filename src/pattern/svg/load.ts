/**
 * Loads the SVG files that a design names. The library itself opens no file and fetches nothing: whoever builds hands
 * the texts over, or a function that finds them.
 */
import { AnnuletError, type Warn } from "../../errors.js";
import type { Drawing } from "./drawing.js";
import { readSvg } from "./read.js";

/** The files that a design may name: name → text (or its bytes in UTF-8), or a function that gives one, later or at once. */
export type FileSource =
  | Readonly<Record<string, string | Uint8Array>>
  | ((name: string) => FileContent | Promise<FileContent>);

type FileContent = string | Uint8Array | undefined;

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
    drawings.set(name, readSvg(await loadText(name, files, where), name, where, warn));
  }
  return drawings;
}

async function loadText(name: string, files: FileSource, where: string): Promise<string> {
  let content: FileContent;
  try {
    content = typeof files === "function" ? await files(name) : Object.hasOwn(files, name) ? files[name] : undefined;
    if (content instanceof Uint8Array) content = new TextDecoder("utf-8", { fatal: true }).decode(content);
  } catch (cause) {
    if (cause instanceof AnnuletError) {
      const problems = cause.problems.map((problem) => ({ ...problem, path: problem.path ?? where }));
      throw new AnnuletError(problems, { cause });
    }
    const reason = cause instanceof Error ? cause.message : String(cause);
    throw new AnnuletError(
      { code: "svg-file-unreadable", message: `the file ${name} cannot be read: ${reason}`, path: where, value: name },
      { cause },
    );
  }
  if (typeof content === "string") return content;
  throw new AnnuletError({
    code: "svg-file-missing",
    message: `there is no file ${name}`,
    path: where,
    value: name,
    allowed: typeof files === "function" ? undefined : Object.keys(files).slice(0, 20).join(", ") || undefined,
    hint: "hand it to build as files, name → text; the command line looks beside the design",
  });
}
