/**
 * The store of a range: what annulet writes there, and that it is nobody else's.
 */
import { statSync } from "node:fs";
import { join } from "node:path";
import { AnnuletError } from "../../base/errors.js";
import { outputError } from "../../disk/output-errors.js";
import { removeLeftovers } from "../../disk/temporary-files.js";
import type { Part } from "../expand/part.js";
import { TABLES } from "./keep-tables.js";
import { type Manifest, readManifest } from "./manifest.js";
import { RECORDS, RINGS } from "./record-store.js";
import { makeFolders } from "./store/folder-store.js";
import { openStore } from "./store/open-store.js";
import { namesIn, type RangeStore, type StorePlace } from "./store/range-store.js";

/** Name of the manifest, of the whole or of a part. */
export function manifestName(part?: Part | null): string {
  return part === undefined || part === null ? "manifest.json" : `manifest-${part.part}-of-${part.of}.json`;
}

/** Says that a range has begun here, before there is any record. */
const BEGUN = `${RECORDS}/begun`;

/** A store that is the range's own, and the manifest of the run before; undefined where there is none. */
export interface OwnStore {
  readonly store: RangeStore;
  readonly before: Manifest | undefined;
}

/**
 * Opens a store to make a range in. Refuses one in which something would be written over that no range has made.
 *
 * @throws AnnuletError `output-not-writable`, `folder-taken`, `manifest-damaged`, `store-invalid`, `store-failed`
 */
export async function openOwnStore(place: StorePlace, part?: Part): Promise<OwnStore> {
  const { folder, module } = place;
  if (module === undefined && statSync(folder, { throwIfNoEntry: false })?.isFile() === true) {
    throw outputError("output-not-writable", folder, `${folder} is a file, not a folder.`);
  }
  const store = await openStore(place);
  const before = await readManifestFile(store, manifestName(part));
  const isBegun = (await namesIn(store, RECORDS)).length > 0;
  if (!isBegun) await requireFree(store, folder, part);
  if (module === undefined) {
    makeFolders(folder, [RINGS, RECORDS]);
    for (const inner of [".", RINGS, RECORDS]) removeLeftovers(join(folder, inner));
  }
  if (!isBegun) await store.put(BEGUN, []);
  return { store, before };
}

async function requireFree(store: RangeStore, folder: string, part: Part | undefined): Promise<void> {
  const taken = (await namesIn(store, RINGS)).length > 0 ? [RINGS] : [];
  for (const name of [...TABLES, manifestName(part)]) if ((await store.has(name)) !== undefined) taken.push(name);
  if (taken.length === 0) return;
  throw new AnnuletError({
    code: "folder-taken",
    message: `${folder} holds ${taken.join(", ")}, which no range has made`,
    value: folder,
    hint: "choose an empty folder, or one that is not there yet",
  });
}

/** The manifest in a store; undefined where there is none. @throws AnnuletError `manifest-damaged` */
export async function readManifestFile(store: RangeStore, name: string): Promise<Manifest | undefined> {
  const bytes = await store.get(name);
  return bytes === undefined ? undefined : readManifest(new TextDecoder().decode(bytes), name);
}
