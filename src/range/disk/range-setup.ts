/** How a range is made. */
import type { Limits } from "../../base/limits.js";
import type { Part } from "../expand/part.js";
import type { Makers } from "./makers.js";
import type { LinkSetup } from "./queue/queue-link.js";

export interface RangeSetup extends Partial<LinkSetup> {
  /** Where all goes; made where it is not there. With `store`, what that calls the range. */
  readonly folder: string;
  /** URL of a module that exports `openStore(folder)`: another store than the disk. */
  readonly store?: string | undefined;
  /** Where the files are that plan and designs name. Default the current one. */
  readonly planFolder?: string | undefined;
  /**
   * Processes that make rings. Default one for each core. With `queue`, groups of variants that are on the queue at once, some for
   * each process of each worker; default 256.
   */
  readonly jobs?: number | undefined;
  /** What each variant may cost; a process that is still at it 5 s later is killed. Default 300 s, else as the library's. */
  readonly limits?: Partial<Limits> | undefined;
  /** Resident memory of a process, bytes, from which a new one takes its place. Default 10⁹. */
  readonly memory?: number | undefined;
  /** Only this part. Default all. */
  readonly part?: Part | undefined;
  readonly signal?: AbortSignal | undefined;
  /** Is told how many variants there are, of this part, before any is looked at. */
  readonly onCount?: ((count: number) => void) | undefined;
  /** Who makes the rings. Default processes. */
  readonly makers?: Makers | undefined;
}

/** Defaults; chosen. */
export const RANGE_DEFAULTS = { seconds: 300, memory: 1e9, queued: 256 } as const;

/** The program of the processes, beside this one where annulet is built. */
export const PROGRAM = new URL("./range-worker.js", import.meta.url);
