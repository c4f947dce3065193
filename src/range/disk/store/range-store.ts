/**
 * Where the files of a range stand: a folder, or whatever else can do these five things. Paths are relative, with / between.
 */

/** At once, or later. */
export type Soon<T> = T | Promise<T>;

export interface RangeStore {
  /**
   * Puts a file whole or not at all, over what stood there: whoever asks meanwhile gets what was before.
   *
   * @param chunks handed out once; each is done with before the next is asked for
   */
  put(path: string, chunks: Iterable<Uint8Array>): Soon<void>;
  /** All bytes of a file; undefined where there is none. */
  get(path: string): Soon<Uint8Array | undefined>;
  /** How many bytes a file has; undefined where there is none. */
  has(path: string): Soon<number | undefined>;
  /** Names of the files right in a folder, in any order; none where there is no such folder. `""` is the range's own. */
  list(folder: string): Iterable<string> | AsyncIterable<string> | Promise<Iterable<string>>;
  /** Takes a file away; nothing happens where there is none. */
  remove(path: string): Soon<void>;
}

/** Which store, as plain data, so that other processes can open it too. */
export interface StorePlace {
  /** The range's own: a folder of the disk; where a module is named, what its store calls the range. */
  readonly folder: string;
  /** URL of a module that exports `openStore(folder: string): RangeStore`, later or at once. Default the disk. */
  readonly module?: string | undefined;
}

/** Names of all files in a folder of a store. */
export async function namesIn(store: RangeStore, folder: string): Promise<readonly string[]> {
  const names: string[] = [];
  for await (const name of await store.list(folder)) names.push(name);
  return names;
}
