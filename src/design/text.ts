/**
 * JSON text (RFC 8259) with the place of every key and value.
 */
import { type DocumentNode, parse } from "@humanwhocodes/momoa";
import { AnnuletError } from "../base/errors.js";
import { limits } from "./document-limits.js";
import { type Place, placeAt } from "./place.js";
import { type PlacedData, readTree } from "./tree.js";

/**
 * Reads JSON text. A byte order mark at its start is passed over.
 *
 * @throws AnnuletError `document-too-large` or `json-malformed`, with line and column
 */
export function readText(source: string): PlacedData {
  if (source.length > limits.characters) {
    throw new AnnuletError({
      code: "document-too-large",
      message: `the document has ${source.length} characters; the limit is ${limits.characters}`,
      allowed: `at most ${limits.characters} characters`,
      hint: "leave out what is not part of the design, or draw paths with fewer points",
    });
  }
  const text = source.startsWith("\uFEFF") ? source.slice(1) : source;
  const open = scan(text);
  return readTree(parseTree(text, open));
}

/** Finds, before parsing, what the parser would pass over or break on. Returns how many brackets stay open. */
function scan(text: string): number {
  let depth = 0;
  let values = 1;
  let inText = false;
  for (let i = 0; i < text.length; i++) {
    const c = text[i];
    if (inText) {
      if (c === "\\") i++;
      else if (c === '"') inText = false;
      else if (c < " ") {
        const what = c === "\n" || c === "\r" ? "a line ends inside a text" : "a text holds a control character";
        throw malformed(what, placeAt(text, i), c === "\t" ? "write \\t for a tab" : "is the closing quote missing?");
      }
    } else if (c === '"') inText = true;
    else if (c === "[" || c === "{") {
      depth++;
      if (depth > limits.depth) {
        throw new AnnuletError({
          code: "value-invalid",
          message: `lists and objects are nested more than ${limits.depth} deep`,
          allowed: `at most ${limits.depth} deep`,
          ...placeAt(text, i),
        });
      }
    } else if (c === "]" || c === "}") depth--;
    // The parser stops here at the latest: what follows, as in a comment, is no JSON.
    else if (c === "/" || c === "#" || c === "'") break;
    else if (c === ",") {
      values++;
      if (values > limits.values) {
        throw new AnnuletError({
          code: "document-too-large",
          message: `the document holds more than ${limits.values} values`,
          allowed: `at most ${limits.values} values`,
          ...placeAt(text, i),
        });
      }
    }
  }
  return depth;
}

function parseTree(text: string, open: number): DocumentNode {
  try {
    return parse(text, { mode: "json" });
  } catch (error) {
    const { offset } = error as { readonly offset?: unknown };
    // Only a stack that the caller had nearly used up leads here without a place.
    if (typeof offset !== "number") throw malformed("the document cannot be read", undefined, undefined, error);
    throw explainMalformed(text, offset, open, error);
  }
}

function explainMalformed(text: string, offset: number, open: number, cause: unknown): AnnuletError {
  const before = text.slice(0, offset).trimEnd().at(-1);
  const at = text[offset];
  const place = placeAt(text, offset);
  if (text.trim() === "") return malformed("the document is empty", place, 'begin with {"annulet": 1}', cause);
  // At the end the parser points at the last token, or one before.
  const last = open > 0 && text.length - offset <= LONGEST_TOKEN && LAST_TOKEN.test(text.slice(offset));
  if (last || (cause as Error).message.startsWith("Unexpected end")) {
    return malformed("the document ends too early", placeAt(text, text.length), "close every {, [ and quote", cause);
  }
  if (before === "," && (at === "}" || at === "]")) {
    const comma = placeAt(text, text.lastIndexOf(",", offset));
    return malformed(`there is a comma before the closing ${at}`, comma, "take the comma away", cause);
  }
  if (at === "/" || at === "#") return malformed("JSON knows no comments", place, "take the comment away", cause);
  if (at === "'" || at === "“" || at === "”") {
    return malformed(`${at} is no quote in JSON`, place, 'write keys and texts in " quotes', cause);
  }
  const word = /^[\p{L}\p{N}_$.+-]+/u.exec(text.slice(offset, offset + SHOWN_WORD_LENGTH))?.[0];
  const hint = word === undefined ? COMMON_SLIPS : `keys and texts stand in " quotes; ${COMMON_SLIPS}`;
  return malformed(`${word ?? JSON.stringify(at)} is not expected here`, place, hint, cause);
}

/** What can stand last in a document that ends too early; a closing bracket in its place is one too many. */
const LAST_TOKEN = /^(?:"[^"]*"|[{[,:-]|[\d.eE+-]+|true|false|null)?\s*$/;

/** Longest last token that is looked at, in characters. */
const LONGEST_TOKEN = 1000;

/** Longest span of an unexpected word that a message shows, in characters. */
const SHOWN_WORD_LENGTH = 20;

const COMMON_SLIPS = "a missing comma, colon or bracket before this is the usual reason";

function malformed(message: string, place?: Place, hint?: string, cause?: unknown): AnnuletError {
  return new AnnuletError({ code: "json-malformed", message, allowed: "JSON", hint, ...place }, { cause });
}
