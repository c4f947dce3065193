/**
 * Files that designs name, carried to other machines through the range's store: each under the digest of its bytes, once for all
 * variants that name it.
 */
import { AnnuletError, type Problem } from "../../../base/errors.js";
import type { FileSource } from "../../../base/files.js";
import type { FileDigests } from "../../records/variant-keys.js";
import { keepFile, sha256Of } from "../store/keep-file.js";
import type { RangeStore } from "../store/range-store.js";

/** Where they stand in the store, while the range is made. */
const FILES = "files";

/** What a task tells of the files that its designs name. */
export interface CarriedFiles {
  /** Name in the design → SHA-256 of the bytes. */
  readonly digests: FileDigests;
  /** Of names that could not be read where the range was begun: what is wrong. */
  readonly faults: Readonly<Record<string, readonly Problem[]>>;
}

/** The files of a task, out of the store. What was at fault is so again, in the same words. */
export function carriedFiles(store: RangeStore, { digests, faults }: CarriedFiles): FileSource {
  return async (name) => {
    if (Object.hasOwn(faults, name)) throw new AnnuletError(faults[name]);
    if (!Object.hasOwn(digests, name)) return undefined;
    const bytes = await store.get(pathOf(digests[name]));
    if (bytes !== undefined && sha256Of(bytes) === digests[name]) return bytes;
    const what = bytes === undefined ? "is not" : "was changed";
    const message = `the file ${name} ${what} in the range's store, ${pathOf(digests[name])}`;
    throw new AnnuletError({ code: "store-failed", message, value: name, hint: "begin the range again" });
  };
}

/** Carries files into a store, each once in a run. */
export class FileCarrier {
  readonly #store: RangeStore;
  readonly #files: FileSource;
  readonly #carried = new Set<string>();

  /** @param files as the designs name them */
  constructor(store: RangeStore, files: FileSource) {
    this.#store = store;
    this.#files = files;
  }

  /**
   * @param names with the digests that the variants are known by
   * @throws AnnuletError `output-failed`, `store-failed`
   */
  async carry(names: FileDigests): Promise<CarriedFiles> {
    const digests: Record<string, string> = {};
    const faults: Record<string, readonly Problem[]> = {};
    for (const name of Object.keys(names)) {
      const content = await this.#read(name);
      if (content === undefined) continue;
      if ("problems" in content) faults[name] = content.problems;
      else digests[name] = await this.#put(content.bytes);
    }
    return { digests, faults };
  }

  /** What is at fault with a file is the variant's to tell. */
  async #read(
    name: string,
  ): Promise<{ readonly bytes: Uint8Array } | { readonly problems: readonly Problem[] } | undefined> {
    const files = this.#files;
    try {
      const content = typeof files === "function" ? await files(name) : files[name];
      if (content === undefined) return undefined;
      return { bytes: typeof content === "string" ? new TextEncoder().encode(content) : content };
    } catch (error) {
      return { problems: AnnuletError.from(error).problems };
    }
  }

  async #put(bytes: Uint8Array): Promise<string> {
    const digest = sha256Of(bytes);
    if (this.#carried.has(digest)) return digest;
    if ((await this.#store.has(pathOf(digest))) !== bytes.length) await keepFile(this.#store, pathOf(digest), [bytes]);
    this.#carried.add(digest);
    return digest;
  }

  /** Takes away what this run has carried. */
  async clear(): Promise<void> {
    for (const digest of this.#carried) await this.#store.remove(pathOf(digest));
    this.#carried.clear();
  }
}

function pathOf(digest: string): string {
  return `${FILES}/${digest}`;
}
