/**
 * Names of fields and of choices, and the help for a field, in the page's language.
 */
import { byPlace } from "../../fields/by-place.js";
import { type LanguageTag, language } from "../language.js";
import { englishChoices } from "./english-choices.js";
import { englishNames } from "./english-names.js";
import { germanChoices } from "./german-choices.js";
import { germanHelp } from "./german-help.js";
import { germanNames } from "./german-names.js";

type Catalogue = Readonly<Record<LanguageTag, Readonly<Record<string, string>>>>;

export const FIELD_NAMES: Catalogue = { en: englishNames, de: germanNames };
export const CHOICE_NAMES: Catalogue = { en: englishChoices, de: germanChoices };
export const FIELD_HELP: Catalogue = { en: {}, de: germanHelp };

/** What a field is called: by its language's catalogue, else by the English one, else by its key. */
export function sayField(schema: string): string {
  return byPlace(FIELD_NAMES[language.value], schema) ?? byPlace(englishNames, schema) ?? plainKey(schema);
}

/** What a word of a choice, or a form, is called. */
export function sayChoice(schema: string, word: unknown): string {
  const key = `${schema}.${String(word)}`;
  return byPlace(CHOICE_NAMES[language.value], key) ?? byPlace(englishChoices, key) ?? String(word);
}

/** The help for a field: the catalogue's, else what the schema says. */
export function sayHelp(schema: string, description: string | undefined): string {
  return byPlace(FIELD_HELP[language.value], schema) ?? description ?? "";
}

/** `cornerAngle` → corner angle. */
function plainKey(schema: string): string {
  const key = schema.slice(schema.lastIndexOf(".") + 1);
  return key.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`).replaceAll("-", " ");
}
