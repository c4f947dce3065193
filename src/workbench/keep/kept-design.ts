/**
 * A design as the browser keeps it.
 */

/** What is known of a kept design; its files, changes and picture are kept beside it. */
export interface KeptDesign {
  readonly id: string;
  readonly name: string;
  readonly text: string;
  /** When it was last kept, ms since 1970. */
  readonly at: number;
  /** Another one with each write, so that a page sees whether it wrote the last one. */
  readonly revision: string;
  /** Names of the files that are kept with it. */
  readonly files: readonly string[];
  /** Where it is a file on the disk: the digest of the content that it was shaped from. */
  readonly base?: string | undefined;
  /** When it was put away, ms since 1970: it can be brought back. */
  readonly deleted?: number | undefined;
}

/** What is kept beside a design. */
export type KeptPart = "file" | "history" | "picture";

/** A place where designs are kept. Everything may reject: storage can be full, forbidden, or gone. */
export interface KeepStore {
  list(): Promise<readonly KeptDesign[]>;
  get(id: string): Promise<KeptDesign | undefined>;
  /**
   * Writes in one step.
   *
   * @param over the revision that may be replaced; undefined where none may stand there
   * @returns whether it was written: not where another page wrote meanwhile
   */
  put(design: KeptDesign, over: string | undefined): Promise<boolean>;
  part(kind: KeptPart, key: string): Promise<unknown>;
  putPart(kind: KeptPart, key: string, value: unknown): Promise<void>;
  /** Takes a design away for good, with all that is kept beside it. */
  remove(design: KeptDesign): Promise<void>;
}

/** What a file is kept under. */
export function fileKey(id: string, name: string): string {
  return `${id}/${name}`;
}
