/** Whether two paths, or a path and an open file, are one file, by whatever name. */
import { fstatSync, type Stats, statSync } from "node:fs";

/** What the system knows of a file, links followed; undefined where there is none or it cannot be asked. */
export function statOf(file: string | number): Stats | undefined {
  try {
    return typeof file === "number" ? fstatSync(file) : statSync(file);
  } catch {
    return undefined;
  }
}

/** @param one a path, or the number of an open file */
export function isSameFile(one: string | number, other: string): boolean {
  const a = statOf(one);
  const b = statOf(other);
  return a !== undefined && b !== undefined && a.ino === b.ino && a.dev === b.dev;
}
