/**
 * The contents of the files that a design names, taken once for each ring: what stands in a file afterwards is another
 * ring's matter.
 */
import type { FileContent, FileSource } from "../../base/files.js";

/** What asking for a file came to. */
type Outcome = { readonly content: FileContent } | { readonly error: unknown };

/** Some files as they were when they were asked for. */
export interface FileContents {
  readonly outcomes: ReadonlyMap<string, Outcome>;
  /** Names of all files there are, where the source can tell; they are listed where one is missing. */
  readonly known: readonly string[] | undefined;
  /** Answers as the source did then. */
  readonly source: FileSource;
}

/** Asks for files by their names, one after the other; the same name once. */
export async function takeFiles(names: readonly string[], files: FileSource): Promise<FileContents> {
  const outcomes = new Map<string, Outcome>();
  for (const name of names) if (!outcomes.has(name)) outcomes.set(name, await take(name, files));
  if (typeof files === "function") return { outcomes, known: undefined, source: (name) => replay(outcomes, name) };
  const taken = [...outcomes].flatMap(([name, outcome]) =>
    "content" in outcome && outcome.content !== undefined ? [[name, outcome.content] as const] : [],
  );
  return { outcomes, known: Object.keys(files), source: { ...files, ...Object.fromEntries(taken) } };
}

async function take(name: string, files: FileSource): Promise<Outcome> {
  try {
    const content =
      typeof files === "function" ? await files(name) : Object.hasOwn(files, name) ? files[name] : undefined;
    // The caller may fill the same bytes with another file.
    return { content: content instanceof Uint8Array ? Uint8Array.from(content) : content };
  } catch (error) {
    return { error };
  }
}

function replay(outcomes: FileContents["outcomes"], name: string): FileContent {
  const outcome = outcomes.get(name);
  if (outcome === undefined) throw new Error(`the file ${name} was not asked for when the ring was opened`);
  if ("error" in outcome) throw outcome.error;
  return outcome.content;
}

/** Whether the same was there both times, byte by byte. What failed may go well the next time, so it is never the same. */
export function sameFiles(a: FileContents, b: FileContents): boolean {
  const names = [...a.outcomes.keys()];
  if (names.length !== b.outcomes.size || (a.known === undefined) !== (b.known === undefined)) return false;
  const missing = (one: FileContents) => names.some((name) => !isThere(one.outcomes.get(name)));
  if ((missing(a) || missing(b)) && a.known?.join("\n") !== b.known?.join("\n")) return false;
  return names.every((name) => sameOutcome(a.outcomes.get(name), b.outcomes.get(name)));
}

function isThere(outcome: Outcome | undefined): boolean {
  return outcome !== undefined && "content" in outcome && outcome.content !== undefined;
}

function sameOutcome(a: Outcome | undefined, b: Outcome | undefined): boolean {
  if (a === undefined || b === undefined || "error" in a || "error" in b) return false;
  const [one, other] = [a.content, b.content];
  if (!(one instanceof Uint8Array && other instanceof Uint8Array)) return one === other;
  return one.length === other.length && one.every((byte, i) => byte === other[i]);
}
