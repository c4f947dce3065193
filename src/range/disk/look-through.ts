/**
 * What of a range is there already: variants whose record says that they follow from the same design, files and version.
 */
import { AnnuletError } from "../../base/errors.js";
import type { FileSource } from "../../base/files.js";
import type { PlainObject } from "../../design/plain.js";
import { readDesign } from "../../design/read.js";
import { NAMING_PARTS, namedFiles } from "../../ring/named-files.js";
import type { Variant } from "../expand/open-plan.js";
import type { Plan } from "../plan/plan-schema.js";
import type { VariantRecord } from "../records/record.js";
import { type FileDigests, sourceText } from "../records/variant-keys.js";
import { fileDigests } from "./make-variant.js";
import { filesStand, readRecord } from "./record-store.js";
import { sha256Of } from "./store/keep-file.js";
import type { RangeStore } from "./store/range-store.js";

/** A variant with what its record must say. */
export interface Sourced {
  readonly source: string;
  readonly files: FileDigests;
}

export class LookThrough {
  readonly #plan: Plan;
  readonly #files: FileSource;
  readonly #store: RangeStore;
  #last: { readonly document: PlainObject; readonly files: FileDigests } | undefined;
  readonly #digests = new Map<string, Promise<FileDigests>>();

  /** @param files that the designs name */
  constructor(plan: Plan, files: FileSource, store: RangeStore) {
    this.#plan = plan;
    this.#files = files;
    this.#store = store;
  }

  async source({ document }: Pick<Variant, "document">): Promise<Sourced> {
    const files = await this.#filesOf(document);
    const source = sha256Of(sourceText(this.#plan, document, files));
    return { source, files };
  }

  /** The record of a variant that need not be made again. */
  async kept(name: string, source: string): Promise<VariantRecord | undefined> {
    const record = await readRecord(this.#store, name);
    return record?.source === source && (await filesStand(this.#store, record)) ? record : undefined;
  }

  /** Of variants that share the parts of the design which name files. */
  async #filesOf(document: PlainObject): Promise<FileDigests> {
    const before = this.#last;
    if (before !== undefined && NAMING_PARTS.every((part) => before.document[part] === document[part]))
      return before.files;
    const files = await this.#digestsOf(document);
    this.#last = { document, files };
    return files;
  }

  #digestsOf(document: PlainObject): Promise<FileDigests> {
    const names = namesIn(document);
    const key = JSON.stringify(names);
    const known = this.#digests.get(key) ?? fileDigests(names, this.#files);
    this.#digests.set(key, known);
    return known;
  }
}

/** None for a design with errors: nothing is made of it. */
function namesIn(document: PlainObject): readonly string[] {
  try {
    return namedFiles(readDesign(document));
  } catch (error) {
    if (error instanceof AnnuletError) return [];
    throw error;
  }
}
