/**
 * The folder of a range: what annulet writes there, and that it is nobody else's.
 */
import { existsSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { AnnuletError } from "../../base/errors.js";
import { outputError } from "../../disk/output-errors.js";
import type { Part } from "../expand/part.js";
import { TABLES } from "./keep-tables.js";
import { type Manifest, readManifest } from "./manifest.js";
import { RECORDS, RINGS } from "./record-store.js";

/** Name of the manifest, of the whole or of a part. */
export function manifestName(part?: Part | null): string {
  return part === undefined || part === null ? "manifest.json" : `manifest-${part.part}-of-${part.of}.json`;
}

/**
 * Refuses a folder in which something would be written over that no range has made.
 *
 * @returns the manifest of the run before; undefined where there is none
 * @throws AnnuletError `output-not-writable`, `folder-taken`, `manifest-damaged`
 */
export function requireOwnFolder(folder: string, part?: Part): Manifest | undefined {
  const stat = statSync(folder, { throwIfNoEntry: false });
  if (stat === undefined) return undefined;
  if (!stat.isDirectory()) throw outputError("output-not-writable", folder, `${folder} is a file, not a folder.`);
  const manifest = readManifestFile(folder, manifestName(part));
  if (existsSync(join(folder, RECORDS))) return manifest;
  const taken = [RINGS, ...TABLES, manifestName(part)].filter((name) => existsSync(join(folder, name)));
  if (taken.length === 0) return undefined;
  throw new AnnuletError({
    code: "folder-taken",
    message: `${folder} holds ${taken.join(", ")}, which no range has made`,
    value: folder,
    hint: "choose an empty folder, or one that is not there yet",
  });
}

/** The manifest in a folder; undefined where there is none. @throws AnnuletError `manifest-damaged` */
export function readManifestFile(folder: string, name: string): Manifest | undefined {
  const path = join(folder, name);
  if (!existsSync(path)) return undefined;
  return readManifest(readFileSync(path, "utf8"), path);
}
