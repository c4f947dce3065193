/**
 * Names of namespaces that a document type abbreviates: `<!DOCTYPE svg [ <!ENTITY ns "http://…"> ]>`, as some drawing
 * programs write it. They are put in place in `xmlns` and `requiredExtensions`, where such names stand, and nowhere else:
 * no entity holds another, and a text that names one elsewhere is refused. One pass, before anything is parsed.
 */
import { AnnuletError } from "../../base/errors.js";
import { tooMuch } from "./svg-limits.js";

/** Most names declared, and most places where they may stand: 300 kB at most. Chosen; files have ten and twenty. */
const MOST = { declared: 100, used: 1000 } as const;

/** The prolog before a document type, piece by piece. */
const BEFORE = /\s+|<\?[^>]{0,1000}\?>|<!--[\s\S]*?-->/y;
const HEAD = /<!DOCTYPE\s+[\w:.-]{1,100}\s*(?:(?:PUBLIC\s*"[^"]{0,300}"|SYSTEM)\s*"[^"]{0,300}"\s*)?\[/y;
const SPACE = /\s+|<!--[\s\S]*?-->/y;
const NAME = /<!ENTITY\s+([\w.-]{1,100})\s+(?:"([^"'&%<>]{0,300})"|'([^"'&%<>]{0,300})')\s*>/y;
const END = /\]\s*>/y;

/** Where names of namespaces stand. */
const PLACES = /(\s(?:xmlns(?::[\w.-]{1,100})?|requiredExtensions)\s*=\s*)("[^"]{0,1000}"|'[^']{0,1000}')/g;
const USE = /&([\w.-]{1,100});/g;

/** Names that XML itself gives (4.6). */
const XMLS_OWN: ReadonlySet<string> = new Set(["lt", "gt", "amp", "apos", "quot"]);

/**
 * The text with its namespaces written out and their declarations taken away; lines keep their numbers. A text whose
 * document type declares nothing stays as it is.
 *
 * @param where the file's place in the document, for errors
 * @throws AnnuletError `svg-entities` for any other declaration or use, `svg-too-complex`
 */
export function writeOutNamespaces(text: string, where: string): string {
  const start = pass(text, BEFORE, text.startsWith("\uFEFF") ? 1 : 0);
  const open = matchAt(HEAD, text, start);
  if (open === undefined) return text;
  const names = new Map<string, string>();
  let at = pass(text, SPACE, start + open[0].length);
  for (let found = matchAt(NAME, text, at); found !== undefined; found = matchAt(NAME, text, at)) {
    const [whole, name, double, single] = found;
    if (XMLS_OWN.has(name)) throw refused(where);
    if (!names.has(name)) names.set(name, double ?? single);
    if (names.size > MOST.declared) throw tooMuch("declares too many entities", `at most ${MOST.declared}`, where);
    at = pass(text, SPACE, at + whole.length);
  }
  const end = matchAt(END, text, at);
  if (end === undefined) throw refused(where);
  const subset = start + open[0].length - 1;
  const lines = text.slice(subset, at).replace(/[^\n]+/g, "");
  return text.slice(0, subset) + lines + putInPlace(text.slice(at + 1), names, where);
}

function putInPlace(text: string, names: ReadonlyMap<string, string>, where: string): string {
  let used = 0;
  const written = text.replace(PLACES, (_, before: string, value: string) => {
    const plain = value.replace(USE, (use: string, name: string) => {
      const space = names.get(name);
      if (space === undefined) return use;
      if (++used > MOST.used) throw tooMuch("uses too many entities", `at most ${MOST.used}`, where);
      return space;
    });
    return before + plain;
  });
  for (const [, name] of written.matchAll(USE)) if (names.has(name)) throw refused(where);
  return written;
}

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text) ?? undefined;
}

/** Where pieces of that kind end. */
function pass(text: string, pattern: RegExp, start: number): number {
  let at = start;
  for (let piece = matchAt(pattern, text, at); piece !== undefined; piece = matchAt(pattern, text, at)) {
    at += piece[0].length;
  }
  return at;
}

/** The error for entities that are no names of namespaces. */
export function refused(where: string): AnnuletError {
  return new AnnuletError({
    code: "svg-entities",
    message: "the SVG file declares entities of its own in its DOCTYPE, which are not expanded",
    path: where,
    allowed: "no DOCTYPE, one without [ … ], or one whose entities are names in xmlns alone",
    hint: "save the drawing as plain SVG, or take the DOCTYPE away",
  });
}
