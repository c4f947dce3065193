/**
 * Which fields of a shape go together: those of exactly one kind.
 */
import type { z } from "zod";

/** A kind's key, all its fields, and those that must be there. */
export interface NodeFields {
  readonly key: string;
  readonly fields: readonly string[];
  readonly required: readonly string[];
}

/** Raises an issue where a shape is of no kind or of two, has a field of another kind, or lacks one. */
export function checkNode(
  kinds: readonly NodeFields[],
  value: Readonly<Record<string, unknown>>,
  context: z.RefinementCtx,
): void {
  const complain = (path: string[], message: string) => context.addIssue({ code: "custom", path, message });
  const given = (key: string) => value[key] !== undefined;
  const [kind, ...others] = kinds.filter(({ key }) => given(key));
  if (kind === undefined) {
    complain([], `says nothing yet: it needs one of ${kinds.map(({ key }) => key).join(", ")}`);
    return;
  }
  for (const { key } of others) complain([key], `is given beside ${kind.key}: keep one of them`);
  if (others.length > 0) return;
  for (const key of kind.required) if (!given(key)) complain([key], "is missing");
  for (const key of Object.keys(value)) {
    if (given(key) && !kind.fields.includes(key)) complain([key], `does not belong to a shape by ${kind.key}`);
  }
}
