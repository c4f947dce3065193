/**
 * Finds all values that a document has at a path; lists are passed through.
 */

/**
 * The values at `pattern.regions.height` of every region, in the document's order. A step may also name the form of the
 * value that it stands after, as in `profile.outside.channel.rail`; `*` stands for any name.
 */
export function findValues(path: string, document: unknown): unknown[] {
  let here: unknown[] = [document];
  for (const step of path.split(".").filter((name) => name !== "")) {
    here = here
      .flatMap((value) => (Array.isArray(value) ? value : [value]))
      .filter((value): value is Record<string, unknown> => typeof value === "object" && value !== null)
      .flatMap((value) => valuesAt(value, step));
  }
  return here;
}

function valuesAt(value: Readonly<Record<string, unknown>>, step: string): unknown[] {
  if (step === "*") return Object.values(value);
  if (Object.hasOwn(value, step)) return [value[step]];
  return value.form === step ? [value] : [];
}
