/**
 * Names as they may stand in a file's header, where a line break or an odd byte would spoil what follows.
 */

/** What no header may hold: control characters, line and paragraph separators, surrogates without a partner. */
const UNPRINTABLE = /[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]+/gu;

/** One line of text: unprintable characters become spaces, runs of space one, and a backslash (which joins lines in OBJ) a slash. */
export function oneLine(name: string): string {
  return name.replace(UNPRINTABLE, " ").replace(/\s+/g, " ").replace(/\\/g, "/").trim();
}

/** `oneLine` as the value of an XML attribute or the text of an element. */
export function xmlText(name: string): string {
  return oneLine(name)
    .replace(/[\uFFFE\uFFFF]/g, " ")
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
}

/** `oneLine` in ASCII: accents are taken off, any other character becomes a question mark. */
export function asciiLine(name: string): string {
  return oneLine(name)
    .normalize("NFKD")
    .replace(/\p{M}+/gu, "")
    .replace(/[^ -~]/gu, "?");
}
