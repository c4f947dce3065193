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

/** One key of a written path: an index or a quoted key in brackets, or a plain name after a dot or at the start. */
const WRITTEN_KEY = /\[(\d{1,9})\]|\[("(?:[^"\\]|\\.)*")\]|(^|\.)([\w$-]+)/y;

/** The keys of a path as `showPath` writes it; undefined where the text is none. */
export function readPath(text: string): Path | undefined {
  const keys: (string | number)[] = [];
  for (let at = 0; at < text.length; ) {
    WRITTEN_KEY.lastIndex = at;
    const found = WRITTEN_KEY.exec(text);
    if (found === null || (at === 0 && found[3] === ".")) return undefined;
    const [whole, index, quoted, , name] = found;
    const key = index !== undefined ? Number(index) : quoted !== undefined ? unquote(quoted) : name;
    if (key === undefined) return undefined;
    keys.push(key);
    at += whole.length;
  }
  return keys.length === 0 ? undefined : keys;
}

function unquote(quoted: string): string | undefined {
  try {
    return JSON.parse(quoted) as string;
  } catch {
    return undefined;
  }
}
