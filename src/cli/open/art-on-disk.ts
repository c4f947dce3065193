/**
 * Art that was dropped on the page, written beside its design: new files alone, whole or not at all, and never over another.
 */
import { linkSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

/** Art by its ending, with the most bytes that the library reads of it (`disk/file-source.ts`). */
const KINDS = [
  { ending: /\.(ttf|otf|woff2?)$/i, bytes: 30e6 },
  { ending: /\.png$/i, bytes: 10e6 },
  { ending: /\.svg$/i, bytes: 5e6 },
] as const;

/** No folder, no hidden file, and no sign that some file system forbids. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is kept out
const PLAIN = /^[^.\\/:*?"<>|\u0000-\u001f\u007f][^\\/:*?"<>|\u0000-\u001f\u007f]*$/;

/** Longest name that file systems take, bytes (ext4, APFS, NTFS: about as many). */
const LONGEST = 255;

/** Most bytes that may be written under a name; undefined for a name under which nothing is. */
export function artBytes(name: string): number | undefined {
  if (!PLAIN.test(name) || Buffer.byteLength(name) > LONGEST) return undefined;
  return KINDS.find(({ ending }) => ending.test(name))?.bytes;
}

/**
 * Writes art beside a design.
 *
 * @param name as `artBytes` takes it
 * @returns whether it stands there now: false where another file has the name, or something that is none
 * @throws Error of the file system: no room, not allowed
 */
export function writeArt(design: string, name: string, bytes: Uint8Array): boolean {
  const target = join(dirname(design), name);
  // On the same disk, so that a link can be made of it.
  const folder = mkdtempSync(join(dirname(design), ".annulet-"));
  try {
    const beside = join(folder, "art");
    writeFileSync(beside, bytes, { flag: "wx" });
    // Unlike a renaming, a link is refused where anything has the name, links that lead nowhere too.
    linkSync(beside, target);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
    return holds(target, bytes);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function holds(target: string, bytes: Uint8Array): boolean {
  try {
    return Buffer.compare(readFileSync(target), bytes) === 0;
  } catch {
    return false;
  }
}
