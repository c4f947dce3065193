/**
 * Reads a design document from a file or from standard input.
 */

import { readFile } from "../disk/read-file.js";
import { AnnuletError } from "../index.js";
import { changeDocument, type PlainObject } from "../toolbox/index.js";
import { changesOf, type DesignOptions } from "./design-options.js";
import { readStdin, STDIN } from "./files.js";
import type { Io } from "./io.js";

/** Largest document, bytes: far above any hand-made design, small enough to be read in a blink. */
export const MAX_DESIGN_BYTES = 5e6;

/** How the argument is described in help. */
export const DESIGN_ARGUMENT = {
  name: "<design...>",
  description: "design document, JSON; - reads standard input; several are worked one after the other",
};

/** Endings of files that are easily mistaken for a design, and what to do with them. */
const MISTAKEN: readonly { readonly ending: RegExp; readonly what: string; readonly hint: string }[] = [
  {
    ending: /\.svg$/i,
    what: "a drawing",
    hint: "name the drawing in a design, as the svg of one of pattern.regions",
  },
  {
    ending: /\.(stl|obj)$/i,
    what: "a finished mesh",
    hint: "annulet inspect checks and weighs a mesh; a ring is made from a design",
  },
];

/** A design as the library reads it: the file's text, or what was made of it. */
export type DesignDocument = string | PlainObject;

/**
 * The document of a design. Where nothing is changed its text is left to the library to read, so that errors have line and
 * column.
 *
 * @param options what is put into the document first
 * @throws AnnuletError `not-a-design` for another kind of file, those of `readFile`, `changesOf` and `changeDocument`
 */
export async function loadDesign(path: string, io: Io, options: DesignOptions): Promise<DesignDocument> {
  const changes = changesOf(options);
  const mistaken = MISTAKEN.find(({ ending }) => ending.test(path));
  if (mistaken !== undefined) throw notADesign(`${path} is ${mistaken.what}, not a design document.`, mistaken.hint);
  const bytes = path === STDIN ? await readStdin(io, MAX_DESIGN_BYTES) : readFile(path, MAX_DESIGN_BYTES);
  const name = path === STDIN ? "standard input" : path;
  const text = decode(bytes, name);
  if (text.trim() === "") throw notADesign(`${name} is empty.`, SCHEMA_HINT);
  if (/^\s*</.test(text)) throw notADesign(`${name} holds XML or SVG, not a design document.`, MISTAKEN[0].hint);
  return changes.length === 0 ? text : changeDocument(text, changes);
}

const SCHEMA_HINT = "annulet schema prints what a design document holds";

/** UTF-8 to text; a byte order mark is dropped. */
function decode(bytes: Uint8Array, name: string): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch (cause) {
    throw new AnnuletError(
      { code: "not-a-design", message: `${name} is not text in UTF-8.`, hint: SCHEMA_HINT },
      { cause },
    );
  }
}

function notADesign(message: string, hint: string): AnnuletError {
  return new AnnuletError({ code: "not-a-design", message, allowed: "a design document, JSON", hint });
}
