/** How a range is made. */
import type { Limits } from "../../base/limits.js";
import type { Part } from "../expand/part.js";
import type { Makers } from "./makers.js";

export interface RangeSetup {
  /** Where all goes; made where it is not there. */
  readonly folder: string;
  /** Where the files are that plan and designs name. Default the current one. */
  readonly planFolder?: string | undefined;
  /** Processes that make rings. Default one for each core. */
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
