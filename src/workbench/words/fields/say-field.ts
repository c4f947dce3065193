/**
 * Names of fields and of choices, and the help for a field, in the page's language.
 */

import type { FieldReference } from "../../../index.js";
import { byPlace } from "../../fields/by-place.js";
import { type LanguageTag, language, say } from "../language.js";
import { sayHelp } from "../say-help.js";
import { englishChoices } from "./english-choices.js";
import { englishNames } from "./english-names.js";
import { germanChoices } from "./german-choices.js";
import { germanNames } from "./german-names.js";

type Catalogue = Readonly<Record<LanguageTag, Readonly<Record<string, string>>>>;

export const FIELD_NAMES: Catalogue = { en: englishNames, de: germanNames };
export const CHOICE_NAMES: Catalogue = { en: englishChoices, de: germanChoices };

/** What a field is called: by its language's catalogue, else by the English one, else by its key. */
export function sayField(schema: string): string {
  return byPlace(FIELD_NAMES[language.value], schema) ?? byPlace(englishNames, schema) ?? plainKey(schema);
}

/** What a word of a choice, or a form, is called. */
export function sayChoice(schema: string, word: unknown): string {
  const key = `${schema}.${String(word)}`;
  return byPlace(CHOICE_NAMES[language.value], key) ?? byPlace(englishChoices, key) ?? String(word);
}

/** What the schema says of a field, with its range and default, which the German catalogue leaves to be said. */
export function sayFieldHelp({ description = "", unit, range, default: preset }: FieldReference): string {
  if (language.value === "en") return description;
  const isPlain = typeof preset === "number" || (typeof preset === "string" && preset.length < LONG);
  const parts = [
    sayHelp(description),
    unit,
    range === undefined ? undefined : sayRange(range),
    isPlain ? say("field.default", { value: withComma(String(preset)) }) : undefined,
  ];
  return parts.filter((part) => part !== undefined && part !== "").join("; ");
}

/** Longest default that is said, in characters; chosen. */
const LONG = 30;

/** The range of a field in words, in the page's language. */
export function sayRange(range: string): string {
  return language.value === "en" ? range : range.split("; ").map(germanRange).join("; ");
}

function germanRange(range: string): string {
  return GERMAN_RANGE.reduce((text, [from, to]) => text.replaceAll(from, to), withComma(range));
}

const GERMAN_RANGE: readonly (readonly [string | RegExp, string])[] = [
  [/(\S+) or more/g, "ab $1"],
  ["up to ", "bis "],
  [" to ", " bis "],
  ["above ", "über "],
  ["below ", "unter "],
  ["at most ", "höchstens "],
  ["entries", "Einträge"],
  ["characters", "Zeichen"],
];

/** `cornerAngle` → corner angle. */
function plainKey(schema: string): string {
  const key = schema.slice(schema.lastIndexOf(".") + 1);
  return key.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`).replaceAll("-", " ");
}

function withComma(text: string): string {
  return text.replaceAll(/(\d)\.(?=\d)/g, "$1,");
}
