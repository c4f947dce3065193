/**
 * The words that a field can be chosen from, and the phases of the work, in the page's language.
 */
import type { Phase, Progress } from "../../index.js";
import { germanChoices } from "./german-choices.js";
import { language } from "./language.js";

/**
 * A word as a person reads it, `seat-edge` or `Rand der Musterfläche`; what it has no German for as it is. Components that
 * call it are drawn anew when the language changes.
 *
 * @param field the key of the field in the document, `form`
 */
export function sayChoice(field: string, word: string): string {
  if (language.value === "en") return word;
  const key = [`${field}.${word}`, word].find((one) => Object.hasOwn(germanChoices, one));
  return key === undefined ? word : germanChoices[key];
}

/** Phases of the work, as a maker calls them. */
const STAGES: Readonly<Record<"en" | "de", Readonly<Record<Phase | "done", string>>>> = {
  en: {
    document: "design",
    size: "size",
    fit: "fit",
    profile: "cross-section",
    pattern: "pattern",
    wrap: "surfaces",
    solids: "solids",
    union: "uniting",
    decimate: "thinning out",
    checks: "checks",
    measure: "measuring",
    output: "output",
    done: "done",
  },
  de: {
    document: "Entwurf",
    size: "Ringweite",
    fit: "Einpassen",
    profile: "Querschnitt",
    pattern: "Muster",
    wrap: "Flächen",
    solids: "Körper",
    union: "Vereinigen",
    decimate: "Ausdünnen",
    checks: "Prüfen",
    measure: "Messen",
    output: "Ausgabe",
    done: "fertig",
  },
};

/** A phase of the work in the page's language. */
export function sayStage(stage: Progress["stage"]): string {
  return STAGES[language.value][stage];
}
