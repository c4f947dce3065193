/**
 * Text as it may go to a terminal: names, sources and file names come from anywhere, and a control character in one could
 * move the cursor, hide text or change the window.
 */

/** The numbers of the terminal sequences that `tint` makes: red, green, yellow, bold, dim and their ends (ECMA-48, SGR). */
const TINTS = "(?:1|2|22|31|32|33|39)";

/** C0 without line feed and tab, DEL, C1 (ECMA-48); and the marks that turn the direction of text (Unicode, UAX 9). */
const CONTROLS = `[\\0-\\x08\\x0b-\\x1f\\x7f-\\x9f\\u202a-\\u202e\\u2066-\\u2069]`;

const WANTED_OR_CONTROL = new RegExp(`\\x1b\\[${TINTS}m|${CONTROLS}`, "g");

/** The text with a � for each control character; line feeds, tabs and the sequences of `tint` stay. */
export function plainText(text: string): string {
  return text.replace(WANTED_OR_CONTROL, (found) => (found.length > 1 ? found : "\ufffd"));
}

/** JSON as text that shows no control character and means the same. */
export function plainJson(value: unknown): string {
  return JSON.stringify(value, null, 2).replace(
    new RegExp(CONTROLS, "g"),
    (found) => `\\u${found.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}
