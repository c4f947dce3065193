/**
 * A document's text: read, and changed at one place with everything else left as it was written.
 */
import { applyEdits, findNodeAtLocation, type JSONPath, modify, parseTree } from "jsonc-parser";

/** Text that is no JSON, or no object. */
export interface Misread {
  /** Where it stops being JSON, in characters from the start. */
  readonly at: number;
  readonly message: string;
}

/** A place in a document: keys and numbers of list entries. */
export type Path = readonly (string | number)[];

/** What a text holds, or where it stops being a document. */
export type ReadText = { readonly value: Readonly<Record<string, unknown>> } | { readonly misread: Misread };

export function readText(text: string): ReadText {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value === "object" && value !== null && !Array.isArray(value)) {
      return { value: value as Record<string, unknown> };
    }
    return { misread: { at: 0, message: "not an object in braces" } };
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    return { misread: { at: firstError(text), message } };
  }
}

/** The text with one value changed; undefined takes it away. Parts that are not there yet are made. */
export function changeText(text: string, path: Path, value: unknown): string {
  const edits = modify(text, path as JSONPath, value, { formattingOptions: { insertSpaces: true, tabSize: 2 } });
  return applyEdits(text, edits);
}

/** Where a value stands, in characters; of the nearest part around it where it is not written. */
export function placeOf(text: string, path: Path): { readonly from: number; readonly to: number } {
  const root = parseTree(text);
  for (let length = path.length; root !== undefined && length >= 0; length--) {
    const node = findNodeAtLocation(root, path.slice(0, length) as JSONPath);
    if (node !== undefined) return { from: node.offset, to: node.offset + node.length };
  }
  return { from: 0, to: text.length };
}

/** `pattern.regions[2].height` → keys and numbers, as errors name places. */
export function pathOf(name: string): Path {
  return [...name.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, index, key]) =>
    index === undefined ? key : Number(index),
  );
}

/** The same as errors name it. */
export function nameOf(path: Path): string {
  return path.reduce<string>(
    (name, key) => (typeof key === "number" ? `${name}[${key}]` : name === "" ? key : `${name}.${key}`),
    "",
  );
}

/** What stands at a place; undefined where nothing does. */
export function valueAt(document: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (part, key) =>
      typeof part === "object" && part !== null && Object.hasOwn(part, key) ? part[key as never] : undefined,
    document,
  );
}

function firstError(text: string): number {
  const errors: { readonly offset: number }[] = [];
  parseTree(text, errors as never);
  return errors[0]?.offset ?? text.length;
}
