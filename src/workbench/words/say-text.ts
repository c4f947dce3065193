/**
 * Any text of the library in the page's language: findings, rules, cautions, names of alloys and size systems, summaries.
 */
import { germanPhrases } from "./german-phrases.js";
import { language } from "./language.js";
import { openPhrasebook } from "./phrasebook.js";
import { germanHelpOf } from "./say-help.js";

const sayPhrase = openPhrasebook(germanPhrases);

/**
 * A text that the library says in English, in the page's language; what it has no word for, a maker's own names among it, as
 * it is. Components that call it are drawn anew when the language changes.
 */
export function sayText(text: string): string {
  return (language.value === "en" ? undefined : germanOf(text)) ?? text;
}

/** German for a text of the library; undefined where there is none. */
export function germanOf(text: string): string | undefined {
  return sayPhrase(text) ?? germanHelpOf(text);
}
