/**
 * Complaints of rules between the fields of a document, as zod's refinements take them.
 */
import type { z } from "zod";

/** Raises an issue at a field of the object that is refined. */
export function complainTo(context: z.RefinementCtx): (field: string, message: string) => void {
  return (field, message) => context.addIssue({ code: "custom", path: [field], message });
}
