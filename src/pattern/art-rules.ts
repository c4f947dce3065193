/**
 * Which of a region's fields say what is drawn: path data or an SVG file, never both.
 */
import type { z } from "zod";

/** The fields that art comes from. */
export interface ArtFields {
  readonly path?: string | undefined;
  readonly svg?: string | undefined;
  readonly place?: unknown;
}

/** Raises an issue where a region has no art or two, or a place for what is no file. */
export function checkArtFields({ path, svg, place }: ArtFields, context: z.RefinementCtx): void {
  const complain = (field: string, message: string) => context.addIssue({ code: "custom", path: [field], message });
  if (path === undefined && svg === undefined) complain("path", "is missing");
  if (path !== undefined && svg !== undefined) complain("svg", "is given beside a path: keep one of them");
  if (svg === undefined && place !== undefined) complain("place", "belongs to an svg file, and none is given");
}
