/**
 * Entries of a list: named for who reads the form, moved, taken away.
 */
import { isObject } from "./ways.js";

/** What an entry calls itself; undefined where it does not. */
export function ownName(entry: unknown): string | undefined {
  if (!isObject(entry)) return undefined;
  const { name, text, symbol, along, motif, form } = entry;
  const motifName = isObject(motif) ? motif.name : undefined;
  return [name, text, symbol, along, motifName, form].find((word) => typeof word === "string") as string | undefined;
}

/** The list with an entry a place further up or down; as it was where it stands at the end. */
export function moveEntry(list: readonly unknown[], at: number, by: -1 | 1): unknown[] {
  const to = at + by;
  if (to < 0 || to >= list.length) return [...list];
  const moved = list.toSpliced(at, 1);
  return moved.toSpliced(to, 0, list[at]);
}

/** The list without an entry. */
export function withoutEntry(list: readonly unknown[], at: number): unknown[] {
  return list.toSpliced(at, 1);
}
