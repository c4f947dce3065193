/**
 * What the schema says of a field, in the page's language.
 */
import { germanHelp } from "./german-help.js";
import { language } from "./language.js";

/**
 * A description of the schema, as `explainField` and the JSON Schema give it, without what stands beside a field: its range
 * and its default. English where there is no German. Components that call it are drawn anew when the language changes.
 */
export function sayHelp(description: string): string {
  return (language.value === "en" ? undefined : germanHelpOf(description)) ?? description;
}

/** German for a description; undefined where it is none of the schema's. */
export function germanHelpOf(description: string): string | undefined {
  const key = helpKey(description);
  return Object.hasOwn(germanHelp, key) ? germanHelp[key] : undefined;
}

/** What ends a phrase of a description. */
const END = "(?=$|[;,])";

/** Phrases that keywords say too. Those in words, as of a default that depends on others, are left out with them. */
const BESIDE = [
  /\.$/,
  /[;,.] default[: ][^;]*/gi,
  /[;,] no default/g,
  new RegExp(`, (?:above )?-?\\d[\\d.]*(?: to -?\\d[\\d.]*| or more| and at most \\d+)?${END}`, "g"),
  new RegExp(`, (?:above \\d+|an even number|at most \\d+|\\d+ to \\d+ characters)${END}`, "g"),
];

/** The description as a key of `germanHelp`. */
export function helpKey(description: string): string {
  return BESIDE.reduce((text, phrase) => text.replace(phrase, ""), description);
}
