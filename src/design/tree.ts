/**
 * Turns the parser's syntax tree into plain data, and keeps where everything stood.
 */
import type { DocumentNode, ValueNode } from "@humanwhocodes/momoa";
import { type Path, showKey, showPath } from "../base/errors/document-path.js";
import type { Problem } from "../base/errors.js";
import { valueAt } from "./forms.js";
import type { Locate, Place } from "./place.js";
import type { Plain } from "./plain.js";

export interface PlacedData {
  readonly data: Plain;
  readonly locate: Locate;
  /** Keys that are written twice. */
  readonly problems: readonly Problem[];
}

interface Entry {
  readonly key: Place;
  readonly value: Place;
}

/** Where the entries of one list or object stand. */
type Entries = ReadonlyMap<string | number, Entry>;

/** The data of a syntax tree; of a key that is written twice, the last value. −0 becomes 0. */
export function readTree(tree: DocumentNode): PlacedData {
  const problems: Problem[] = [];
  const entriesOf = new Map<Plain, Entries>();

  const read = (node: ValueNode, path: Path): Plain => {
    switch (node.type) {
      case "Object": {
        const values = new Map<string, Plain>();
        const entries = new Map<string, Entry>();
        for (const { name, value } of node.members) {
          const key = name.type === "String" ? name.value : name.name;
          const place = startOf(name);
          const earlier = entries.get(key)?.key;
          if (earlier !== undefined) problems.push(duplicate([...path, key], key, earlier, place));
          values.set(key, read(value, [...path, key]));
          entries.set(key, { key: place, value: startOf(value) });
        }
        const result: Plain = Object.fromEntries(values);
        entriesOf.set(result, entries);
        return result;
      }
      case "Array": {
        const result = node.elements.map(({ value }, i) => read(value, [...path, i]));
        entriesOf.set(
          result,
          new Map(node.elements.map(({ value }, i) => [i, { key: startOf(value), value: startOf(value) }])),
        );
        return result;
      }
      case "Number":
        return node.value === 0 ? 0 : node.value;
      case "String":
      case "Boolean":
        return node.value;
      default:
        return null;
    }
  };

  const data = read(tree.body, []);
  return { data, problems, locate: (path, of) => find(path, of ?? "value", data, entriesOf) ?? startOf(tree.body) };
}

/** The place of the last step of a path that is there. */
function find(path: Path, of: keyof Entry, data: Plain, entriesOf: ReadonlyMap<Plain, Entries>): Place | undefined {
  let place: Place | undefined;
  let at: Plain | undefined = data;
  for (const [i, key] of path.entries()) {
    const entry: Entry | undefined = at === undefined ? undefined : entriesOf.get(at)?.get(key);
    if (entry === undefined) break;
    place = i === path.length - 1 ? entry[of] : entry.value;
    at = valueAt(at, [key]);
  }
  return place;
}

function duplicate(path: Path, key: string, first: Place, second: Place): Problem {
  const both = [first, second].map(({ line, column }) => `line ${line}, column ${column}`).join(" and ");
  return {
    code: "duplicate-key",
    message: `${showKey(key)} is written twice, at ${both}`,
    path: showPath(path),
    allowed: "each key once",
    hint: "take one of the two away",
    ...second,
  };
}

function startOf(node: { readonly loc: { readonly start: Place } }): Place {
  const { line, column } = node.loc.start;
  return { line, column };
}
