/**
 * Looks a text over before it is parsed: how long, how deep, how many elements and attributes, and what a document type
 * declares. One pass, no memory; what is not well formed is left to the parser.
 */
import { refused } from "./namespaces.js";
import { SVG_LIMITS, tooMuch } from "./svg-limits.js";

/** Pieces that are passed over whole: comments, CDATA, processing instructions. */
const WHOLE: readonly (readonly [open: string, close: string])[] = [
  ["<!--", "-->"],
  ["<![CDATA[", "]]>"],
  ["<?", "?>"],
];

/** @throws AnnuletError `svg-too-complex` for a text that is too long */
export function guardLength(text: string, where: string): void {
  if (text.length <= SVG_LIMITS.text) return;
  throw tooMuch(`is ${text.length} characters long`, `at most ${SVG_LIMITS.text} characters`, where);
}

/**
 * Refuses what should not be parsed.
 *
 * @param where the file's place in the document, for errors
 * @throws AnnuletError `svg-too-complex`; `svg-entities` for a document type that declares something or names entities
 */
export function guardText(text: string, where: string): void {
  const { depth: deepest, elements: most } = SVG_LIMITS;
  guardLength(text, where);
  let [depth, elements] = [0, 0];
  let at = text.indexOf("<");
  while (at !== -1) {
    const whole = WHOLE.find(([open]) => text.startsWith(open, at));
    if (whole !== undefined) {
      const end = text.indexOf(whole[1], at + whole[0].length);
      at = end === -1 ? -1 : text.indexOf("<", end);
      continue;
    }
    if (text.startsWith("<!", at)) refuseEntities(text, at, where);
    const end = passTag(text, at, where);
    if (text[at + 1] === "/") depth--;
    else if (text[at + 1] !== "!") {
      if (++elements > most) throw tooMuch(`has more than ${most} elements`, `at most ${most}`, where);
      if (text[end - 1] !== "/") depth++;
      if (depth > deepest) throw tooMuch(`nests elements deeper than ${deepest}`, `at most ${deepest}`, where);
    }
    at = text.indexOf("<", end);
  }
}

/** The index of the tag's last character; quotes hide what ends a tag. */
function passTag(text: string, start: number, where: string): number {
  let [at, attributes] = [start, 0];
  for (; at < text.length; at++) {
    const letter = text[at];
    if (letter === ">") return at;
    if (letter !== '"' && letter !== "'") continue;
    const close = text.indexOf(letter, at + 1);
    if (close === -1) return text.length;
    if (++attributes > SVG_LIMITS.attributes) {
      throw tooMuch("has an element with too many attributes", `at most ${SVG_LIMITS.attributes}`, where);
    }
    at = close;
  }
  return at;
}

/** A document type may name SVG's own; of declarations only names of namespaces are followed, and those are gone by now. */
function refuseEntities(text: string, at: number, where: string): void {
  const end = text.indexOf(">", at);
  const declaration = text.slice(at, end === -1 ? undefined : end);
  if (!declaration.includes("[") && !/<!ENTITY/i.test(declaration)) return;
  throw refused(where);
}
