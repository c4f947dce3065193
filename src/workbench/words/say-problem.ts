/**
 * A problem of the library in the page's language. The library speaks English; German stands in the page's own catalogues,
 * by the form of the sentence or else by the problem's code.
 */
import type { Problem } from "../../index.js";
import { germanProblems } from "./german-problems.js";
import { language } from "./language.js";
import { withComma } from "./phrasebook.js";
import { germanOf, sayText } from "./say-text.js";

/** What is shown of a problem beside its path and value. */
export interface SaidProblem {
  readonly text: string;
  /** What would be allowed. */
  readonly allowed?: string;
  /** How to mend it, or what the schema says of the field. */
  readonly hint?: string;
}

/** A problem's words. What has no German stays English. Components that call it are drawn anew when the language changes. */
export function sayProblem({ code, message, allowed, hint }: Problem): SaidProblem {
  if (language.value === "en") return { text: message, allowed, hint };
  return {
    text: germanOf(message) ?? byCode(code) ?? message,
    allowed: allowed === undefined ? undefined : (germanOf(allowed) ?? withComma(allowed)),
    hint: hint === undefined ? undefined : sayText(hint),
  };
}

function byCode(code: string): string | undefined {
  return Object.hasOwn(germanProblems, code) ? germanProblems[code as keyof typeof germanProblems] : undefined;
}
