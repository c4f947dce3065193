/** Lines and columns in a document's text. */
import type { Path } from "../base/errors/document-path.js";

/** Line and column, both from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** Finds where a path's value, or its key, stands in the text; for what is not there, what should hold it. */
export type Locate = (path: Path, of?: "key" | "value") => Place | undefined;

/** The place of a character in a text. Lines end in LF, CR or both. */
export function placeAt(text: string, offset: number): Place {
  const lines = text.slice(0, offset).split(/\r\n|\r|\n/);
  return { line: lines.length, column: lines[lines.length - 1].length + 1 };
}
