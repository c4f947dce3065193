/**
 * Which of a pattern's fields go together: ends need a place where the pattern stops.
 */
import type { z } from "zod";
import { FULL_COVER } from "./repeat-numbers.js";

/** The fields that decide. */
export interface CompositionFields {
  readonly cover: number;
  readonly medallion?: unknown;
  readonly ends?: { readonly form: string } | undefined;
}

/** Raises an issue where ends are described that are not there. */
export function checkComposition({ cover, medallion, ends }: CompositionFields, context: z.RefinementCtx): void {
  const complain = (message: string) => context.addIssue({ code: "custom", path: ["ends"], message });
  if (ends === undefined || ends.form === "cut" || cover < FULL_COVER) return;
  if (ends.form === "ornament") complain("are ornaments beyond the pattern, which needs a cover under 360");
  else if (medallion === undefined) complain("are described, but the pattern goes all the way round");
}
