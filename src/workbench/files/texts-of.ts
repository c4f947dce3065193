/**
 * Where a design sets texts, for a font that comes in.
 */
import { type Path, valueAt } from "../state/json-text.js";

/** Deepest that is looked. A design is far flatter. */
const DEEPEST = 20;

/** The places of all parts of a document that set a text. */
export function textsOf(document: unknown, path: Path = []): readonly Path[] {
  if (typeof document !== "object" || document === null || path.length > DEEPEST) return [];
  const own = "text" in document && typeof document.text === "string" ? [path] : [];
  const keys = Array.isArray(document) ? document.keys() : Object.keys(document);
  return [...own, ...[...keys].flatMap((key) => textsOf(document[key as never], [...path, key]))];
}

/**
 * The text that a font is for: the chosen one, or the only one; undefined where it cannot be told.
 *
 * @param chosen the part of the document that is chosen; a text may lie in it, or it in a text
 */
export function textFor(document: unknown, chosen: Path | undefined): Path | undefined {
  const all = textsOf(document);
  const near = all.filter((path) => chosen !== undefined && (within(path, chosen) || within(chosen, path)));
  const of = near.length > 0 ? near : all;
  return of.length === 1 && valueAt(document, of[0]) !== undefined ? of[0] : undefined;
}

function within(path: Path, part: Path): boolean {
  return part.every((key, index) => path[index] === key);
}
