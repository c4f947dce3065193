/**
 * The language of the page, and texts in it.
 */
import { signal } from "@preact/signals";
import { english, type WordKey, type Words } from "./english.js";
import { german } from "./german.js";

/** Languages by their tags (BCP 47). */
const LANGUAGES: Readonly<Record<string, Words>> = { en: english, de: german };

export type LanguageTag = "en" | "de";

/** Each language in its own words. */
export const LANGUAGE_NAMES: Readonly<Record<LanguageTag, string>> = { en: "English", de: "Deutsch" };

/** The language that is shown. */
export const language = signal<LanguageTag>("en");

/** The first language of the reader's that there is; else English. */
export function preferred(tags: readonly string[]): LanguageTag {
  const known = tags.map((tag) => tag.toLowerCase().split("-")[0]).find((tag) => Object.hasOwn(LANGUAGES, tag));
  return (known ?? "en") as LanguageTag;
}

/** A text in the page's language, with its values put in. Components that call it are drawn anew when the language changes. */
export function say(key: WordKey, values: Readonly<Record<string, string | number>> = {}): string {
  const text = LANGUAGES[language.value][key];
  return text.replaceAll(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));
}

/** A number as the language writes it: decimal comma or point. */
export function sayNumber(value: number, digits: number): string {
  const key = `${language.value} ${digits}`;
  let format = formats.get(key);
  if (format === undefined) {
    format = new Intl.NumberFormat(language.value, { minimumFractionDigits: digits, maximumFractionDigits: digits });
    formats.set(key, format);
  }
  return format.format(value);
}

/** By language and digits: to make one takes forty times as long as to use it. */
const formats = new Map<string, Intl.NumberFormat>();
