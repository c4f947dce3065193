/**
 * Designs in the browser's own database.
 */
import { createStore, del, delMany, get, set, type UseStore, values } from "idb-keyval";
import { fileKey, type KeepStore, type KeptDesign, type KeptPart } from "./kept-design.js";

const NAMES = ["design", "file", "history", "picture"] as const;

/** Opened when first asked for: where storage is forbidden that throws, and the page goes on without. */
export function browserStore(): KeepStore {
  const opened = new Map<string, UseStore>();
  const place = (name: (typeof NAMES)[number]): UseStore => {
    const store = opened.get(name) ?? createStore(`annulet-${name}`, name);
    opened.set(name, store);
    return store;
  };
  return {
    list: async () => values<KeptDesign>(place("design")),
    get: async (id) => get<KeptDesign>(id, place("design")),
    put: async (design, over) => place("design")("readwrite", (designs) => putOver(designs, design, over)),
    part: async (kind: KeptPart, key) => get<unknown>(key, place(kind)),
    putPart: async (kind, key, value) => set(key, value, place(kind)),
    remove: async ({ id, files }) => {
      await del(id, place("design"));
      await delMany(
        files.map((name) => fileKey(id, name)),
        place("file"),
      );
      await del(id, place("history"));
      await del(id, place("picture"));
    },
  };
}

/** Reads and writes in one transaction, so that of two pages one sees what the other wrote. */
function putOver(designs: IDBObjectStore, design: KeptDesign, over: string | undefined): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const { transaction } = designs;
    const asked: IDBRequest<KeptDesign | undefined> = designs.get(design.id);
    let written = false;
    asked.onsuccess = () => {
      written = asked.result?.revision === over;
      try {
        if (written) designs.put(design, design.id);
      } catch (error) {
        reject(error);
        transaction.abort();
      }
    };
    transaction.oncomplete = () => resolve(written);
    transaction.onabort = () => reject(transaction.error);
  });
}
