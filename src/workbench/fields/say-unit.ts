/**
 * Units in the page's language.
 */
import { language } from "../words/language.js";

const GERMAN: Readonly<Record<string, string>> = { degrees: "Grad", grams: "g" };
const ENGLISH: Readonly<Record<string, string>> = { degrees: "°", grams: "g" };

/** A unit as it stands behind a number. */
export function sayUnit(unit: string): string {
  return (language.value === "de" ? GERMAN : ENGLISH)[unit] ?? unit;
}
