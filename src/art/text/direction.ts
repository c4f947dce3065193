/**
 * The direction in which a text is read, and what one line of one direction cannot hold.
 *
 * A text of one direction needs no reordering beyond what the shaping engine does, but for numbers from right to left
 * (`number-runs.ts`). Mixed ones would need all of the Unicode Bidirectional Algorithm (UAX #9); they are refused.
 */
import { AnnuletError } from "../../base/errors.js";
import { isTextDigit } from "./number-runs.js";

export type Direction = "ltr" | "rtl";

/**
 * Letters that are strong and right to left, by the ranges to which Unicode's DerivedBidiClass gives the classes R and AL
 * by default (from memory).
 */
const RIGHT_TO_LEFT = /(?=\p{L})[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufeff\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

const LETTER = /\p{L}/u;
const DIGIT = /\p{Nd}/u;

/** Line ends, tabs and other controls, and the marks and embeddings that only a bidirectional text needs. */
const CONTROL = /[\p{Cc}\p{Zl}\p{Zp}\u200e\u200f\u061c\u202a-\u202e\u2066-\u2069]/u;

/** Scripts whose letters change with their neighbours by rules of their own, one of which the engine applies to a text. */
const SHAPED_SCRIPTS = [
  ...["Arabic", "Syriac", "Thaana", "Nko", "Mandaic", "Adlam", "Hebrew", "Mongolian", "Devanagari", "Bengali"],
  ...["Gurmukhi", "Gujarati", "Oriya", "Tamil", "Telugu", "Kannada", "Malayalam", "Sinhala", "Thai", "Lao", "Tibetan"],
  ...["Myanmar", "Khmer", "Javanese", "Balinese", "Hangul"],
].map((name) => ({ name, letter: new RegExp(`(?=\\p{L})\\p{Script_Extensions=${name}}`, "u") }));

/** Scripts whose letters hang together, so that space between them would tear them apart. */
const JOINED =
  /(?=\p{L})[\p{Script=Arabic}\p{Script=Syriac}\p{Script=Nko}\p{Script=Mandaic}\p{Script=Mongolian}\p{Script=Adlam}\p{Script=Devanagari}\p{Script=Bengali}\p{Script=Gurmukhi}]/u;

/**
 * The direction of a text.
 *
 * @param where the text's place in the document
 * @throws AnnuletError `text-empty`, `text-control-character`, `text-mixes-directions`, `text-mixes-scripts`
 */
export function directionOf(text: string, where: string): Direction {
  const refuse = (code: string, message: string, hint: string) =>
    new AnnuletError({ code, message, path: where, value: text, hint });
  const characters = [...text];
  if (text.trim() === "") throw refuse("text-empty", "the text has nothing to see", "say what is to be set");
  const control = characters.find((one) => CONTROL.test(one));
  if (control !== undefined) {
    const message = `the text holds ${showCharacter(control)}, which sets no letter`;
    throw refuse("text-control-character", message, "give each line, and each direction, a text of its own");
  }
  const rightToLeft = characters.find((one) => RIGHT_TO_LEFT.test(one));
  const other = characters.find(
    (one) => (DIGIT.test(one) && !isTextDigit(one)) || (LETTER.test(one) && !RIGHT_TO_LEFT.test(one)),
  );
  if (rightToLeft !== undefined && other !== undefined) {
    const message = `the text mixes directions: ${showCharacter(rightToLeft)} runs from right to left, ${showCharacter(other)} from left to right`;
    throw refuse("text-mixes-directions", message, "give each direction a text of its own");
  }
  requireOneScript(characters, refuse);
  return rightToLeft === undefined ? "ltr" : "rtl";
}

/** Whether letter spacing would tear the text apart. */
export function isJoined(text: string): boolean {
  return JOINED.test(text);
}

/** A character with its number, as Unicode writes it: `é (U+00E9)`. */
export function showCharacter(character: string): string {
  const codes = [...character].map((one) => {
    const code = (one.codePointAt(0) ?? 0).toString(16).toUpperCase();
    return `U+${code.padStart(4, "0")}`;
  });
  return CONTROL.test(character) ? codes.join(" ") : `${character} (${codes.join(" ")})`;
}

function requireOneScript(
  characters: readonly string[],
  refuse: (code: string, message: string, hint: string) => AnnuletError,
): void {
  const letters = characters.filter((one) => LETTER.test(one));
  const script = SHAPED_SCRIPTS.find(({ letter }) => letters.some((one) => letter.test(one)));
  const other = letters.find((one) => script !== undefined && !script.letter.test(one));
  if (script === undefined || other === undefined) return;
  const message = `the text mixes ${script.name} with ${showCharacter(other)}, which is shaped by other rules`;
  throw refuse("text-mixes-scripts", message, "give each script a text of its own");
}
