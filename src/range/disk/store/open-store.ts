/**
 * Opens the store of a range: the disk's, or that of a module which the user names. What such a one throws is told as a failure of
 * the store.
 */
import { AnnuletError } from "../../../base/errors.js";
import { folderStore } from "./folder-store.js";
import type { RangeStore, Soon, StorePlace } from "./range-store.js";

/** @throws AnnuletError `store-invalid` where the module gives none */
export async function openStore(place: string | StorePlace): Promise<RangeStore> {
  const { folder, module } = placeOf(place);
  if (module === undefined) return folderStore(folder);
  const store = await fromModule(module, folder);
  const missing = METHODS.filter((name) => typeof store[name] !== "function");
  if (missing.length > 0) throw invalid(module, `gives a store without ${missing.join(", ")}`);
  return told(store);
}

/** A folder's name alone is one of the disk. */
export function placeOf(place: string | StorePlace): StorePlace {
  return typeof place === "string" ? { folder: place } : place;
}

const METHODS = ["put", "get", "has", "list", "remove"] as const satisfies readonly (keyof RangeStore)[];

async function fromModule(module: string, folder: string): Promise<RangeStore> {
  let openIt: unknown;
  try {
    ({ openStore: openIt } = await import(/* @vite-ignore */ module));
  } catch (cause) {
    throw invalid(module, `cannot be loaded: ${reasonIn(cause)}`, cause);
  }
  if (typeof openIt !== "function") throw invalid(module, "exports no function openStore");
  try {
    return Object(await openIt(folder));
  } catch (cause) {
    throw failed("open", folder, cause);
  }
}

/** The same store, whose failures say what it was asked. */
function told(store: RangeStore): RangeStore {
  const asked =
    <T>(what: string, ask: (path: string) => Soon<T>) =>
    async (path: string): Promise<T> => {
      try {
        return await ask(path);
      } catch (cause) {
        throw failed(what, path, cause);
      }
    };
  return {
    put: (path, chunks) => asked("put", (name) => store.put(name, chunks))(path),
    get: asked("get", (path) => store.get(path)),
    has: asked("has", (path) => store.has(path)),
    remove: asked("remove", (path) => store.remove(path)),
    list: asked("list", async (folder) => {
      const names: string[] = [];
      for await (const name of await store.list(folder)) names.push(name);
      return names;
    }),
  };
}

function reasonIn(cause: unknown): string {
  return cause instanceof Error ? cause.message : String(cause);
}

function invalid(module: string, why: string, cause?: unknown): AnnuletError {
  const message = `the store's module ${module} ${why}`;
  const hint = "export openStore(folder), which gives put, get, has, list and remove: see the guide on ranges";
  return new AnnuletError({ code: "store-invalid", message, value: module, hint }, { cause });
}

function failed(what: string, path: string, cause: unknown): AnnuletError {
  if (cause instanceof AnnuletError) return cause;
  const message = `the store failed to ${what} ${path}: ${reasonIn(cause)}`;
  return new AnnuletError({ code: "store-failed", message, value: path }, { cause });
}
