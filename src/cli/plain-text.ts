/**
 * Text as it may go to a terminal: names, sources and file names come from anywhere, and a control character in one could
 * move the cursor, hide text or change the window.
 */

import { randomUUID } from "node:crypto";

/** Stands for the escape of a sequence that the program itself writes. Drawn anew in each process: no name can hold it. */
const OWN_ESCAPE = `\x1b${randomUUID()}`;

/** A terminal's sequences as the program's own, so that `plainText` lets them pass. */
export function ownSequences(sequences: string): string {
  return sequences.replaceAll("\x1b", OWN_ESCAPE);
}

/** C0 without line feed and tab, DEL, C1 (ECMA-48); and the marks that turn the direction of text (Unicode, UAX 9). */
const CONTROLS = `[\\0-\\x08\\x0b-\\x1f\\x7f-\\x9f\\u202a-\\u202e\\u2066-\\u2069]`;

const OWN_OR_CONTROL = new RegExp(`${OWN_ESCAPE}|${CONTROLS}`, "g");

/** The text with a � for each control character; line feeds, tabs and the program's own sequences stay. */
export function plainText(text: string): string {
  return text.replace(OWN_OR_CONTROL, (found) => (found === OWN_ESCAPE ? "\x1b" : "\ufffd"));
}

/** JSON as text that shows no control character and means the same, indented by some spaces, or by 0 on one line. */
export function plainJson(value: unknown, indent = 2): string {
  return JSON.stringify(value, null, indent).replace(
    new RegExp(CONTROLS, "g"),
    (found) => `\\u${found.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}
