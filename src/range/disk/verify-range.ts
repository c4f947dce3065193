/**
 * Checks a range's files against its manifest: every file's bytes, and that nothing else stands among them.
 */
import { AnnuletError } from "../../base/errors.js";
import { pause } from "../../base/pause.js";
import type { RecordedFile } from "../records/record.js";
import type { Manifest } from "./manifest.js";
import { readManifestFile } from "./range-folder.js";
import { RINGS } from "./record-store.js";
import { sha256Of } from "./store/keep-file.js";
import { openStore, placeOf } from "./store/open-store.js";
import { namesIn, type RangeStore, type StorePlace } from "./store/range-store.js";

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

/**
 * The manifests in a store, the whole's and those of parts.
 *
 * @param folder for the error
 * @throws AnnuletError `manifest-damaged`, `file-missing`
 */
export async function manifestsIn(store: RangeStore, folder: string): Promise<readonly Manifest[]> {
  const found: Manifest[] = [];
  for (const name of await namesIn(store, "")) {
    const manifest = MANIFEST.test(name) ? await readManifestFile(store, name) : undefined;
    if (manifest !== undefined) found.push(manifest);
  }
  if (found.length > 0) return found;
  const message = `There is no manifest in ${folder}.`;
  throw new AnnuletError({ code: "file-missing", message, value: folder, hint: "make the range first" });
}

/**
 * @param place the range's folder; or what another store calls it, with the store's module
 * @throws AnnuletError as `manifestsIn`; `store-invalid`, `store-failed`; the signal's reason
 */
export async function verifyRange(place: string | StorePlace, signal?: AbortSignal): Promise<Verified> {
  const store = await openStore(place);
  const manifests = await manifestsIn(store, placeOf(place).folder);
  const listed = new Map<string, RecordedFile>();
  for (const { variants, tables } of manifests) {
    for (const file of [...tables, ...variants.flatMap(({ files }) => files)]) listed.set(file.path, file);
  }
  const deviations: Deviation[] = [];
  for (const file of listed.values()) {
    const what = await whyNot(store, file);
    if (what !== undefined) deviations.push({ path: file.path, what });
    await pause();
    signal?.throwIfAborted();
  }
  const others = (await namesIn(store, RINGS)).map((name) => `${RINGS}/${name}`);
  for (const path of others) if (!listed.has(path)) deviations.push({ path, what: "not of this range" });
  return { manifests, files: listed.size, deviations: deviations.sort((a, b) => (a.path < b.path ? -1 : 1)) };
}

/** What is wrong with a file of a range; undefined where it is as it was written. */
export async function whyNot(
  store: RangeStore,
  { path, bytes, sha256 }: RecordedFile,
): Promise<Deviation["what"] | undefined> {
  const found = await store.get(path);
  if (found === undefined) return "missing";
  return found.length === bytes && sha256Of(found) === sha256 ? undefined : "changed";
}
