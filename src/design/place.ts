/** Places in a document: paths to a value, and lines and columns in its text. */

/** Keys and indices from the document's root. */
export type Path = readonly (string | number)[];

/** Line and column, both from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** Finds where a path's value, or its key, stands in the text; for what is not there, what should hold it. */
export type Locate = (path: Path, of?: "key" | "value") => Place | undefined;

/** Longest key that a path shows in full, in characters; known keys are far shorter. */
const SHOWN_KEY_LENGTH = 60;

/** `pattern.regions[2].ribbon.width`; keys that are no plain names stand in brackets and quotes. */
export function showPath(path: Path): string | undefined {
  if (path.length === 0) return undefined;
  return path
    .map((key, i) => {
      if (typeof key === "number") return `[${key}]`;
      if (/^[\w$]+$/.test(key) && key.length <= SHOWN_KEY_LENGTH) return i === 0 ? key : `.${key}`;
      return `[${showKey(key)}]`;
    })
    .join("");
}

/** A key in quotes, cut where it is very long. */
export function showKey(key: string): string {
  return JSON.stringify(key.length > SHOWN_KEY_LENGTH ? `${key.slice(0, SHOWN_KEY_LENGTH)}…` : key);
}

/** The place of a character in a text. Lines end in LF, CR or both. */
export function placeAt(text: string, offset: number): Place {
  const lines = text.slice(0, offset).split(/\r\n|\r|\n/);
  return { line: lines.length, column: lines[lines.length - 1].length + 1 };
}
