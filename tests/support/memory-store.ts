/**
 * A store in this process's memory, as a module that ranges are given: what it has put is what later `openStore` calls find.
 */
import type { RangeStore } from "../../src/range/disk/store/range-store.js";

/** Range → path → bytes. */
const ranges = new Map<string, Map<string, Uint8Array>>();

export const MEMORY_STORE = import.meta.url;

/** What a range holds by now. */
export function heldBy(range: string): Map<string, Uint8Array> {
  const held = ranges.get(range) ?? new Map<string, Uint8Array>();
  ranges.set(range, held);
  return held;
}

export async function openStore(range: string): Promise<RangeStore> {
  if (range === "closed") throw new Error("it is closed on Sundays");
  const files = heldBy(range);
  return {
    async put(path, chunks) {
      if (path.includes("refused")) throw new Error("it is full");
      const bytes = Buffer.concat([...chunks].map((chunk) => Uint8Array.from(chunk)));
      await Promise.resolve();
      files.set(path, bytes);
    },
    get: async (path) => files.get(path),
    has: async (path) => files.get(path)?.length,
    async *list(folder) {
      const inside = folder === "" ? "" : `${folder}/`;
      for (const path of files.keys()) {
        const name = path.slice(inside.length);
        if (path.startsWith(inside) && !name.includes("/")) yield name;
      }
    },
    remove: async (path) => void files.delete(path),
  };
}
