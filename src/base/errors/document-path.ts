/** Paths to a value in a document, and how messages show them. */

/** Keys and indices from the document's root. */
export type Path = readonly (string | number)[];

/** Longest key that a path shows in full, in characters; known keys are far shorter. */
const SHOWN_KEY_LENGTH = 60;

/** `pattern.regions[2].ribbon.width`; keys that are no plain names stand in brackets and quotes. */
export function showPath(path: Path): string | undefined {
  if (path.length === 0) return undefined;
  return path
    .map((key, i) => {
      if (typeof key === "number") return `[${key}]`;
      if (/^[\w$]+$/.test(key) && key.length <= SHOWN_KEY_LENGTH) return i === 0 ? key : `.${key}`;
      return `[${showKey(key)}]`;
    })
    .join("");
}

/** A key in quotes, cut where it is very long. */
export function showKey(key: string): string {
  return JSON.stringify(key.length > SHOWN_KEY_LENGTH ? `${key.slice(0, SHOWN_KEY_LENGTH)}…` : key);
}
