/**
 * Reads a design document, from JSON text or from a plain object, and says everything that is wrong with it at once.
 */
import { AnnuletError, type Problem } from "../base/errors.js";
import { explain } from "./explain-problems.js";
import type { Locate, Place } from "./place.js";
import { copyPlain, isPlainObject, type Plain } from "./plain.js";
import { type Design, designSchema } from "./schema.js";
import { readText } from "./text.js";
import { upgradeDocument } from "./versions.js";

/** Most problems that one error lists; the last then says that there are more. */
const MAX_PROBLEMS = 200;

/**
 * The design that a document describes, every default filled in, earlier versions brought up to date. A string is taken
 * as JSON text, and errors then have line and column; anything else as the document itself.
 *
 * @throws AnnuletError with all problems: `document-too-large`, `json-malformed`, `duplicate-key`, `document-version`,
 * `unknown-key`, `value-missing`, `value-invalid`, `more-problems`
 *
 * @example
 * const { name, tolerance } = readDesign(document); // defaults filled in: tolerance is 0.01
 */
export function readDesign(source: unknown): Design {
  const { data, locate, problems } = typeof source === "string" ? readText(source) : fromObject(source);
  if (!isPlainObject(data)) {
    const allowed = "an object";
    const hint = 'begin with {"annulet": 1}';
    const other = {
      code: "value-invalid",
      message: "a design is an object",
      value: data,
      allowed,
      hint,
      ...locate([]),
    };
    fail(problems.length > 0 ? problems : [other]);
  }
  const { document, problem, readable } = upgradeDocument(data);
  const version = problem === undefined ? [] : [{ ...problem, ...locate(["annulet"]) }];
  // What could not be copied is null in the copy, and has been said.
  const said = new Set(problems.filter(({ code }) => code === "value-invalid").map(({ path }) => path));
  // One more than are listed tells that there are more; so many again may be filtered.
  const most = MAX_PROBLEMS + 1 + said.size;
  const parsed = readable ? designSchema.safeParse(document) : undefined;
  const issues = parsed?.error?.issues ?? [];
  const others = explain(issues, { schema: designSchema, document, locate, most }).filter(
    ({ path }) => !said.has(path),
  );
  const found = [...problems, ...version, ...others];
  if (found.length > 0) fail(found);
  // Where a document cannot be read, or has issues, something has been found.
  if (parsed?.data === undefined) throw new Error("a document without a problem is a design");
  return parsed.data;
}

function fromObject(source: unknown): { data: Plain; locate: Locate; problems: readonly Problem[] } {
  return { ...copyPlain(source), locate: () => undefined };
}

function fail(problems: readonly Problem[]): never {
  const ordered = problems.toSorted(byPlace);
  if (ordered.length <= MAX_PROBLEMS) throw new AnnuletError(ordered);
  throw new AnnuletError([
    ...ordered.slice(0, MAX_PROBLEMS),
    {
      code: "more-problems",
      message: `there are more than these ${MAX_PROBLEMS} problems`,
      hint: "mend these first",
    },
  ]);
}

function byPlace(a: Partial<Place>, b: Partial<Place>): number {
  return (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0);
}
