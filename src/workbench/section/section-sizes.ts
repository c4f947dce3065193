/**
 * The sizes that a cross-section is drawn from: as the document has them now, and where it is silent as the last answer had.
 */
import type { Path } from "../state/json-text.js";

/** Names of sizes, by their place within `profile`: `outside.rail`. */
export type SectionSizes = Readonly<Record<string, number>>;

/** What has to be known of a `profile` with its defaults filled in. */
export interface ReadProfile {
  readonly outside: { readonly form: string };
  readonly bore: { readonly form: string };
}

/** A cross-section's numbers. */
export interface SectionNumbers {
  readonly form: string;
  readonly bore: string;
  readonly sizes: SectionSizes;
}

type Part = Readonly<Record<string, unknown>>;

function isPart(value: unknown): value is Part {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Every number of a part, by its name; those of parts within it by name and point. */
function numbersOf(part: unknown, before = ""): SectionSizes {
  if (!isPart(part)) return {};
  return Object.fromEntries(
    Object.entries(part).flatMap(([key, value]): [string, number][] => {
      if (typeof value === "number") return [[`${before}${key}`, value]];
      return before === "" && isPart(value) ? Object.entries(numbersOf(value, `${key}.`)) : [];
    }),
  );
}

/**
 * @param written the document's `profile`, which may be anything
 * @param read the same with its defaults filled in, of the last document that could be read
 */
export function sectionNumbers(written: unknown, read: ReadProfile): SectionNumbers {
  const named = (key: "outside" | "bore"): unknown => {
    const part = isPart(written) ? written[key] : undefined;
    return isPart(part) ? part.form : undefined;
  };
  const form = String(named("outside") ?? read.outside.form);
  const bore = String(named("bore") ?? read.bore.form);
  // Of another form than the last answer's nothing is known yet but what is written.
  const known = form === read.outside.form && bore === read.bore.form ? numbersOf(read) : {};
  return { form, bore, sizes: { ...known, ...numbersOf(written) } };
}

/** Where a size stands in the document. */
export function sizePath(name: string): Path {
  return ["profile", ...name.split(".")];
}
