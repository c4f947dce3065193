/**
 * Waits until a file is another than it was. Files are looked at again and again: what a system tells of its own accord is
 * not the same everywhere, and editors put a new file in the place of the old one.
 */
import { setTimeout as sleep } from "node:timers/promises";
import { statOf } from "../disk/same-file.js";

/** Between two looks, ms: a save shows at once, and looking costs nothing to speak of. */
const LOOK_EVERY = 200;

/** Which files there are and which contents they seem to have: a text that is another after each save. */
export function stampOf(paths: readonly string[]): string {
  return paths
    .map((path) => {
      const stat = statOf(path);
      return stat === undefined ? `${path} none` : `${path} ${stat.ino} ${stat.size} ${stat.mtimeMs}`;
    })
    .join("\n");
}

/**
 * Resolves when the files no longer are as they were and have stayed as they are from one look to the next.
 *
 * @param before their stamp as it was
 * @param signal rejects with its reason when it is aborted
 */
export async function waitForChange(paths: readonly string[], before: string, signal?: AbortSignal): Promise<void> {
  let last = before;
  for (;;) {
    const now = stampOf(paths);
    if (now !== before && now === last) return;
    last = now;
    await sleep(LOOK_EVERY, undefined, { signal });
  }
}
