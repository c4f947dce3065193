/**
 * A folder of the disk as a store, the one that comes with annulet. Other machines may share it.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { outputError } from "../../../disk/output-errors.js";
import { writeWhole } from "../../../disk/write-whole.js";
import type { RangeStore } from "./range-store.js";

/** What `put` throws: AnnuletError `output-failed`. */
export function folderStore(folder: string): RangeStore {
  const at = (path: string) => join(folder, path);
  return {
    put(path, chunks) {
      makeInner(folder, dirname(path));
      writeWhole(at(path), chunks);
    },
    get(path) {
      try {
        return readFileSync(at(path));
      } catch {
        return undefined;
      }
    },
    has(path) {
      const stat = statSync(at(path), { throwIfNoEntry: false });
      return stat?.isFile() === true ? stat.size : undefined;
    },
    list(inner) {
      try {
        return readdirSync(at(inner));
      } catch {
        return [];
      }
    },
    remove: (path) => rmSync(at(path), { force: true }),
  };
}

/** A folder right in the range's, which itself has to be there. What cannot be made the file tells. */
function makeInner(folder: string, inner: string): void {
  if (existsSync(join(folder, inner))) return;
  try {
    mkdirSync(join(folder, inner));
  } catch {
    // Made meanwhile by another, or not to be made.
  }
}

/** Makes a folder of a range with those inside it. @throws AnnuletError `output-not-writable` */
export function makeFolders(folder: string, inner: readonly string[]): void {
  try {
    for (const name of inner) mkdirSync(join(folder, name), { recursive: true });
  } catch (cause) {
    throw outputError("output-not-writable", folder, `Cannot write to the folder ${folder}`, cause);
  }
}
