/**
 * The text of a plain value, by which values are compared: two values have the same text only where they are the same.
 *
 * What JSON would let fall together stays apart: a field that is undefined and one that is not there, −0 and 0, NaN and
 * null. Fields count in their order: a table made from them may show it. No text holds a line break.
 */

/** @throws TypeError where the value holds what is not plain: a function, an instance of a class */
export function canonicalText(value: unknown): string {
  switch (typeof value) {
    case "string":
      return JSON.stringify(value);
    case "number":
      return Object.is(value, -0) ? "-0" : String(value);
    case "boolean":
    case "undefined":
      return String(value);
    default:
      return textInside(value);
  }
}

function textInside(value: unknown): string {
  if (value === null) return "null";
  if (Array.isArray(value)) return `[${value.map(canonicalText).join(",")}]`;
  if (typeof value === "object" && isBare(value)) return `{${Object.entries(value).map(fieldText).join(",")}}`;
  throw new TypeError("only plain values are compared by their text");
}

/** Whether an object is of no class. */
function isBare(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || Object.getPrototypeOf(prototype) === null;
}

function fieldText([key, value]: [string, unknown]): string {
  return `${JSON.stringify(key)}:${canonicalText(value)}`;
}
