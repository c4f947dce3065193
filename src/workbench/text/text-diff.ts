/**
 * The smallest change that makes one text of another, so that a caret stays where it stood.
 */

/** What is replaced, in characters of the old text. */
export interface TextChange {
  readonly from: number;
  readonly to: number;
  readonly insert: string;
}

/** Undefined where nothing differs. */
export function changeBetween(before: string, after: string): TextChange | undefined {
  if (before === after) return undefined;
  const shorter = Math.min(before.length, after.length);
  let from = 0;
  while (from < shorter && before[from] === after[from]) from++;
  let end = 0;
  while (end < shorter - from && before[before.length - 1 - end] === after[after.length - 1 - end]) end++;
  return { from, to: before.length - end, insert: after.slice(from, after.length - end) };
}
