/**
 * Tables by the end of a field's place in the schema: `regions.height` stands for the field in tiles, lanes and medallions.
 */

/** Names of forms that a field's place may hold, and that a table may leave out: `section.wall` for `section.domed.wall`. */
const FORMS = new Set(
  "flat domed channel bevelled concave knife free comfort ridge hollow cut fade ornament".split(" "),
);

/**
 * The entry whose key is the longest end of the place, with or without the forms in it; undefined where none is. A key that
 * begins with a point stands for a field of the document itself.
 */
export function byPlace<Value>(table: Readonly<Record<string, Value>>, schema: string): Value | undefined {
  const steps = ["", ...schema.split(".")];
  const plain = steps.filter((step) => !FORMS.has(step) && !step.startsWith("{"));
  for (let length = steps.length; length > 0; length--) {
    for (const some of [steps, plain]) {
      const key = some.slice(-length).join(".");
      if (some.length >= length && Object.hasOwn(table, key)) return table[key];
    }
  }
  return undefined;
}
