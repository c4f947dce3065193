/**
 * As much of a list of changes as is kept.
 */
import type { ChangeHistory } from "../state/document.js";

/** Most lines, and most characters in all of them: what is written again with each change. Chosen. */
const MOST_LINES = 200;
const MOST_CHARACTERS = 2e6;

/** The lines next to the one that holds, itself among them; the oldest go first. */
export function shortenHistory({ changes, at }: ChangeHistory): ChangeHistory {
  let from = at;
  let to = at + 1;
  let characters = changes[at]?.text.length ?? 0;
  const fits = (index: number): boolean => {
    const length = changes[index]?.text.length ?? Number.POSITIVE_INFINITY;
    return to - from < MOST_LINES && characters + length <= MOST_CHARACTERS;
  };
  for (; to < changes.length && fits(to); to++) characters += changes[to].text.length;
  for (; from > 0 && fits(from - 1); from--) characters += changes[from - 1].text.length;
  return { changes: changes.slice(from, to), at: at - from };
}
