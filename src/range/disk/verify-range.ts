/**
 * Checks a range's folder against its manifest: every file's bytes, and that nothing else stands among them.
 */
import { createHash } from "node:crypto";
import { closeSync, openSync, readdirSync, readSync } from "node:fs";
import { join } from "node:path";
import { AnnuletError } from "../../base/errors.js";
import { pause } from "../../base/pause.js";
import type { RecordedFile } from "../records/record.js";
import type { Manifest } from "./manifest.js";
import { readManifestFile } from "./range-folder.js";
import { RINGS } from "./record-store.js";

/** A file that is not as the manifest says. */
export interface Deviation {
  /** In the range's folder. */
  readonly path: string;
  readonly what: "missing" | "changed" | "not of this range";
}

export interface Verified {
  readonly manifests: readonly Manifest[];
  /** Files that were read. */
  readonly files: number;
  readonly deviations: readonly Deviation[];
}

const MANIFEST = /^manifest(-\d+-of-\d+)?\.json$/;

/** The manifests in a folder, the whole's and those of parts. @throws AnnuletError `manifest-damaged`, `file-missing` */
export function manifestsIn(folder: string): readonly Manifest[] {
  const names = namesIn(folder).filter((name) => MANIFEST.test(name));
  const found = names.flatMap((name) => readManifestFile(folder, name) ?? []);
  if (found.length > 0) return found;
  const message = `There is no manifest in ${folder}.`;
  throw new AnnuletError({ code: "file-missing", message, value: folder, hint: "make the range first" });
}

/** @throws AnnuletError as `manifestsIn`; the signal's reason */
export async function verifyRange(folder: string, signal?: AbortSignal): Promise<Verified> {
  const manifests = manifestsIn(folder);
  const listed = new Map<string, RecordedFile>();
  for (const { variants, tables } of manifests) {
    for (const file of [...tables, ...variants.flatMap(({ files }) => files)]) listed.set(file.path, file);
  }
  const deviations: Deviation[] = [];
  for (const file of listed.values()) {
    const what = whyNot(folder, file);
    if (what !== undefined) deviations.push({ path: file.path, what });
    await pause();
    signal?.throwIfAborted();
  }
  const others = namesIn(join(folder, RINGS)).map((name) => `${RINGS}/${name}`);
  for (const path of others) if (!listed.has(path)) deviations.push({ path, what: "not of this range" });
  return { manifests, files: listed.size, deviations: deviations.sort((a, b) => (a.path < b.path ? -1 : 1)) };
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

/** Bytes that are read at once. */
const AT_ONCE = 1 << 20;

/** What is wrong with a file of a range; undefined where it is as it was written. */
export function whyNot(folder: string, { path, bytes, sha256 }: RecordedFile): Deviation["what"] | undefined {
  let file: number;
  try {
    file = openSync(join(folder, path), "r");
  } catch {
    return "missing";
  }
  try {
    const digest = createHash("sha256");
    const buffer = new Uint8Array(AT_ONCE);
    let total = 0;
    for (let length = readSync(file, buffer); length > 0; length = readSync(file, buffer)) {
      digest.update(buffer.subarray(0, length));
      total += length;
    }
    return total === bytes && digest.digest("hex") === sha256 ? undefined : "changed";
  } finally {
    closeSync(file);
  }
}
