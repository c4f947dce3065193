/**
 * Which design lies on the bench when the page opens.
 */
import type { Keep } from "../keep/keep.js";
import type { Begun } from "../state/bench.js";
import { ON_DISK } from "./desk.js";
import type { DiskDesign } from "./disk-design.js";

/** Where a page remembers its design over a reload. */
export interface Session {
  readonly get: () => string | null;
  readonly set: (id: string) => void;
}

/** The tab's own storage; forgetful where the browser forbids it. */
export function tabSession(storage: () => Storage): Session {
  const name = "annulet-design";
  const tried = <Value>(ask: () => Value, otherwise: Value): Value => {
    try {
      return ask();
    } catch {
      return otherwise;
    }
  };
  return {
    get: () => tried(() => storage().getItem(name), null),
    set: (id) => tried(() => storage().setItem(name, id), undefined),
  };
}

/** The file on the disk with what was not saved of it; else the tab's design, else the newest that is kept; else none. */
export async function firstDesign(
  keep: Keep,
  disk: DiskDesign | undefined,
  session: Session,
): Promise<Begun | undefined> {
  if (disk !== undefined) return fromDisk(keep, disk);
  await keep.refresh();
  const kept = keep.list.peek().filter(({ deleted }) => deleted === undefined);
  const own = kept.find(({ id }) => id === session.get()) ?? kept[0];
  return own && keep.read(own.id);
}

/** Work that was not saved before a reload is shown again; where the file was changed meanwhile, saving asks. */
async function fromDisk(keep: Keep, disk: DiskDesign): Promise<Begun | undefined> {
  const [loaded, kept] = await Promise.all([disk.load(), keep.read(ON_DISK)]);
  if (loaded === undefined) return kept;
  if (kept?.base === undefined || kept.text === loaded.text) {
    disk.goOnFrom(loaded);
    keep.setBase(ON_DISK, loaded.digest);
    return { id: ON_DISK, text: loaded.text, ...(kept?.text === loaded.text ? kept : undefined) };
  }
  disk.goOnFrom(kept.base === loaded.digest ? loaded : { text: "", digest: kept.base });
  return kept;
}
