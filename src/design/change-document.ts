/**
 * Values of a document put in place of others by their paths, before it is read as a design.
 */
import { type Path, readPath, showPath } from "../base/errors/document-path.js";
import { AnnuletError, type Problem } from "../base/errors.js";
import { isPlainObject, type Plain, type PlainObject } from "./plain.js";
import { readText } from "./text.js";

/** A value and where it goes. */
export interface DocumentChange {
  /** As errors show it: `pattern.fit.repeats`, `beads[0].diameter`. */
  readonly path: string;
  readonly value: Plain;
}

/**
 * The document of a JSON text with values put in, one change after the other. Objects that are not there yet are made, and
 * the entry that follows a list's last is added to it. Whether the result is a design is left to its reader.
 *
 * @throws AnnuletError `json-malformed`, `document-too-large`, `duplicate-key`; `change-invalid` with every path that leads
 * nowhere
 */
export function changeDocument(text: string, changes: readonly DocumentChange[]): PlainObject {
  const { data, problems } = readText(text);
  if (problems.length > 0) throw new AnnuletError(problems);
  return changePlain(data, changes);
}

/**
 * The same of a document that is read already, which stays as it is: what is not changed is shared with it.
 *
 * @throws AnnuletError `change-invalid` with every path that leads nowhere
 */
export function changePlain(data: Plain, changes: readonly DocumentChange[]): PlainObject {
  let document = data;
  const wrong: Problem[] = [];
  for (const change of changes) {
    const done = applyChange(document, change);
    if ("problem" in done) wrong.push(done.problem);
    else document = done.document;
  }
  if (wrong.length > 0) throw new AnnuletError(wrong);
  if (!isPlainObject(document)) {
    throw new AnnuletError(changeProblem("a design is an object", "", "an object", 'begin with {"annulet": 1}'));
  }
  return document;
}

type Applied = { readonly document: Plain } | { readonly problem: Problem };

function applyChange(document: Plain, { path, value }: DocumentChange): Applied {
  const keys = readPath(path);
  if (keys === undefined) {
    const problem = changeProblem(`${path} is no path in a document`, path, PATH_FORM);
    return { problem };
  }
  return put(document, keys, 0, value);
}

const PATH_FORM = "keys with dots between them and entries of lists in brackets, as pattern.regions[0].height";

/** The value with another one put in where the keys from the `at`th on lead. */
function put(value: Plain | undefined, keys: Path, at: number, inner: Plain): Applied {
  if (at === keys.length) return { document: inner };
  const key = keys[at];
  const here = showPath(keys.slice(0, at)) ?? "the document";
  const whole = showPath(keys) ?? "";
  const holder = value ?? (typeof key === "number" ? [] : {});
  if (typeof key === "number") {
    if (!Array.isArray(holder)) return { problem: changeProblem(`${here} is no list`, whole, "a key of it") };
    if (key > holder.length) {
      const entries = holder.length === 1 ? "[0]" : `[0] to [${holder.length - 1}]`;
      const allowed = holder.length === 0 ? "[0]" : `${entries}, or [${holder.length}] to add one`;
      return { problem: changeProblem(`${here} has no entry [${key}]`, whole, allowed) };
    }
    const done = put(holder[key], keys, at + 1, inner);
    if ("problem" in done) return done;
    return { document: [...holder.slice(0, key), done.document, ...holder.slice(key + 1)] };
  }
  if (!isPlainObject(holder)) {
    const allowed = Array.isArray(holder) ? "an entry of it, as [0]" : "the path to it";
    return { problem: changeProblem(`${here} has no fields`, whole, allowed) };
  }
  const done = put(Object.hasOwn(holder, key) ? holder[key] : undefined, keys, at + 1, inner);
  if ("problem" in done) return done;
  // By entries, so that no key, such as __proto__, means anything else.
  return { document: Object.fromEntries([...Object.entries(holder), [key, done.document]]) };
}

function changeProblem(message: string, value: string, allowed: string, hint?: string): Problem {
  return { code: "change-invalid", message, value, allowed, ...(hint === undefined ? {} : { hint }) };
}
