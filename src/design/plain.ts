/**
 * A plain copy of a value from a program: what JSON could carry, or problems with their paths.
 */
import { type Path, showPath } from "../base/errors/document-path.js";
import { AnnuletError, type Problem } from "../base/errors.js";
import { limits } from "./document-limits.js";

export type Plain = null | boolean | number | string | readonly Plain[] | PlainObject;
export interface PlainObject {
  readonly [key: string]: Plain | undefined;
}

/** Whether a value is an object with keys. */
export function isPlainObject(value: unknown): value is PlainObject {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** The copy, and what could not be copied; that is null in the copy. */
export interface PlainCopy {
  readonly data: Plain;
  readonly problems: readonly Problem[];
}

/**
 * Copies own enumerable keys. Fields that are undefined count as left out; −0 becomes 0; NaN and infinities stay, to be
 * refused where a number is expected.
 *
 * @throws AnnuletError `document-too-large`
 */
export function copyPlain(source: unknown): PlainCopy {
  const problems: Problem[] = [];
  const around = new Set<object>();
  let left: number = limits.values;

  const refuse = (path: Path, message: string, value?: unknown): null => {
    const allowed = "an object, a list, text, a number, true, false or null";
    problems.push({ code: "value-invalid", message, path: showPath(path), value, allowed });
    return null;
  };

  const copy = (value: unknown, path: Path): Plain => {
    left--;
    if (left < 0) {
      const message = `the document holds more than ${limits.values} values`;
      throw new AnnuletError({ code: "document-too-large", message, allowed: `at most ${limits.values} values` });
    }
    switch (typeof value) {
      case "number":
        return value === 0 ? 0 : value;
      case "string":
        if (value.length > limits.characters) return refuse(path, `is a text of ${value.length} characters`);
        return value;
      case "boolean":
        return value;
      case "object":
        return value === null ? null : copyInside(value, path);
      default:
        return refuse(path, `is ${KINDS[typeof value as keyof typeof KINDS]}, which a document cannot hold`);
    }
  };

  const copyInside = (value: object, path: Path): Plain => {
    if (around.has(value)) return refuse(path, "holds itself");
    if (around.size >= limits.depth) return refuse(path, `is nested more than ${limits.depth} deep`);
    around.add(value);
    try {
      if (Array.isArray(value))
        return Array.from({ length: Math.min(value.length, left + 1) }, (_, i) => copy(value[i], [...path, i]));
      const prototype = Object.getPrototypeOf(value);
      if (prototype !== null && Object.getPrototypeOf(prototype) !== null) return refuse(path, "is not a plain object");
      const entries: [string, Plain][] = [];
      for (const [key, inner] of Object.entries(value)) {
        if (inner !== undefined) entries.push([key, copy(inner, [...path, key])]);
      }
      return Object.fromEntries(entries);
    } catch (error) {
      if (error instanceof AnnuletError) throw error;
      // A getter or a proxy of the caller's threw.
      return refuse(path, "cannot be read");
    } finally {
      around.delete(value);
    }
  };

  const data = copy(source, []);
  return { data, problems };
}

const KINDS = {
  function: "a function",
  symbol: "a symbol",
  bigint: "a big integer",
  undefined: "undefined",
} as const;
