/**
 * Which of a region's fields say what is drawn: exactly one of them.
 */
import type { z } from "zod";
import { complainTo } from "./complain.js";

/** The fields that art comes from, and what each is called. */
const SOURCES = {
  path: "a path",
  svg: "an svg file",
  shape: "a shape",
  motif: "a motif",
  text: "a text",
  image: "an image",
  texture: "a texture",
} as const;

/** A field that art comes from. */
export type ArtField = keyof typeof SOURCES;

/** A region as far as its art is concerned. */
export type ArtFields = { readonly [Field in Exclude<ArtField, "text">]?: unknown } & {
  readonly text?: { readonly height?: number | undefined } | undefined;
  readonly take?: unknown;
  readonly place?: { readonly fit?: unknown; readonly scale: number } | undefined;
};

const sources = Object.keys(SOURCES) as ArtField[];

/** The field that a region's art comes from. */
export function artField(region: ArtFields): ArtField {
  return sources.find((field) => region[field] !== undefined) ?? "path";
}

/** Raises an issue where a region has no art or two, or a place for what is no file. */
export function checkArtFields(region: ArtFields, context: z.RefinementCtx): void {
  const complain = complainTo(context);
  const [first, ...others] = sources.filter((field) => region[field] !== undefined);
  if (first === undefined) complain("path", "is missing");
  for (const field of others) complain(field, `is given beside ${SOURCES[first]}: keep one of them`);
  const { svg, text, place, take } = region;
  if (svg === undefined && take !== undefined) complain("take", "belongs to an svg file, and none is given");
  if (svg === undefined && text === undefined && place !== undefined) {
    complain("place", "belongs to an svg file or a text, and none is given");
  }
  if (text?.height !== undefined && (place?.fit !== undefined || (place?.scale ?? 1) !== 1)) {
    complain("place", "has a fit or a scale beside the text's height: keep one of them");
  }
}
