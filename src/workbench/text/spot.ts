/**
 * What stands at a place of the text: which field's key or value, and what of the text a completion takes the place of.
 */
import { getLocation } from "jsonc-parser";
import type { Path } from "../state/json-text.js";

/** A place in the text. */
export interface Spot {
  /** Of a key: where the object stands. Of a value: where the value stands. */
  readonly path: Path;
  readonly at: "key" | "value";
  readonly from: number;
  readonly to: number;
  /** Whether the key has its colon already. */
  readonly hasColon: boolean;
}

/** Letters of a word that is being typed. */
const WORD = /[\w.-]*$/;

export function spotAt(text: string, offset: number): Spot {
  const { path, isAtPropertyKey, previousNode } = getLocation(text, offset);
  const isIn = previousNode !== undefined && previousNode.offset <= offset && offset <= endOf(previousNode);
  const typed = WORD.exec(text.slice(0, offset))?.[0].length ?? 0;
  const [from, to] = isIn ? [previousNode.offset, endOf(previousNode)] : [offset - typed, offset];
  return {
    path: isAtPropertyKey ? path.slice(0, -1) : path,
    at: isAtPropertyKey ? "key" : "value",
    from,
    to,
    hasColon: /^\s*:/.test(text.slice(to, to + 20)),
  };
}

function endOf({ offset, length }: { readonly offset: number; readonly length: number }): number {
  return offset + length;
}
