/**
 * A place to keep designs in for tests: what two pages of one browser share.
 */
import { fileKey, type KeepStore, type KeptDesign } from "../../../src/workbench/keep/kept-design.js";

export interface MemoryStore extends KeepStore {
  readonly designs: Map<string, KeptDesign>;
  readonly parts: Map<string, unknown>;
  /** Thrown by every write while it is set. */
  wrong: Error | undefined;
}

export function memoryStore(): MemoryStore {
  const designs = new Map<string, KeptDesign>();
  const parts = new Map<string, unknown>();
  const store: MemoryStore = {
    designs,
    parts,
    wrong: undefined,
    list: async () => [...designs.values()],
    get: async (id) => designs.get(id),
    put: async (design, over) => {
      if (store.wrong) throw store.wrong;
      if (designs.get(design.id)?.revision !== over) return false;
      designs.set(design.id, structuredClone(design));
      return true;
    },
    part: async (kind, key) => parts.get(`${kind} ${key}`),
    putPart: async (kind, key, value) => {
      if (store.wrong) throw store.wrong;
      parts.set(`${kind} ${key}`, structuredClone(value));
    },
    remove: async ({ id, files }) => {
      designs.delete(id);
      for (const name of files) parts.delete(`file ${fileKey(id, name)}`);
      for (const kind of ["history", "picture"]) parts.delete(`${kind} ${id}`);
    },
  };
  return store;
}
