/**
 * The template by which variants are called: text with {base}, {n} and the names of axes.
 */
import { nearest } from "../../base/errors/nearest.js";
import { AnnuletError } from "../../base/errors.js";
import type { Axis } from "../axes/axis.js";
import { inName, requireSafe } from "./safe-name.js";

const BLANK = /\{([^{}]*)\}/g;

/** What a template is filled with. */
export interface NameParts {
  /** The base design's name. */
  readonly base: string;
  /** Number of the variant, from 1, and how many there are. */
  readonly number: number;
  readonly count: number;
  /** Values of the axes by their names. */
  readonly shown: Readonly<Record<string, string>>;
}

/** Makes a variant's name. @throws AnnuletError `name-unsafe` */
export type NameVariant = (parts: NameParts) => string;

/**
 * Reads a template.
 *
 * @param template default the base's name and all axes; of rows with several columns the number
 * @throws AnnuletError `name-unsafe` for a blank that nothing fills, and for letters that no name takes
 */
export function readTemplate(template: string | undefined, axes: readonly Axis[]): NameVariant {
  const text = template ?? defaultTemplate(axes);
  const known = ["base", "n", ...axes.flatMap(({ names }) => names)];
  for (const [, blank] of text.matchAll(BLANK)) if (!known.includes(blank)) throw unknownBlank(blank, text, known);
  requireSafe(text.replaceAll(BLANK, "x"));
  return ({ base, number, count, shown }) => {
    const fill = (blank: string) => {
      if (blank === "n") return String(number).padStart(String(count).length, "0");
      return inName(blank === "base" ? base : shown[blank]);
    };
    return requireSafe(text.replaceAll(BLANK, (_, blank: string) => fill(blank)));
  };
}

function defaultTemplate(axes: readonly Axis[]): string {
  const single = axes.flatMap(({ names }) => (names.length === 1 ? [`{${names[0]}}`] : []));
  const number = axes.some(({ names }) => names.length > 1) ? ["{n}"] : [];
  return ["{base}", ...single, ...number].join("-");
}

function unknownBlank(blank: string, template: string, known: readonly string[]): AnnuletError {
  return new AnnuletError({
    code: "name-unsafe",
    message: `there is no {${blank}} here`,
    path: "name",
    value: template,
    allowed: known.map((name) => `{${name}}`).join(", "),
    hint: nearest(blank, known),
  });
}
