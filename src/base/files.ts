/**
 * The files that a design names. The library itself opens no file and fetches nothing: whoever builds hands the contents
 * over, or a function that finds them.
 */
import { AnnuletError } from "./errors.js";

/** The files that a design may name: name → text or bytes, or a function that gives one, later or at once. */
export type FileSource =
  | Readonly<Record<string, string | Uint8Array>>
  | ((name: string) => FileContent | Promise<FileContent>);

/** Text of a drawing, bytes of an image or a font; undefined where there is no such file. */
export type FileContent = string | Uint8Array | undefined;

export interface NamedFile {
  readonly name: string;
  /** Where the name stands in the document, for errors. */
  readonly where: string;
  /** What the codes of errors begin with, e.g. `svg`. */
  readonly kind: string;
  /** What to do where the file is not there. */
  readonly hint: string;
}

/** Names that are listed where one is missing. */
const NAMES_SHOWN = 20;

/**
 * A file's content, through `read` where it is there.
 *
 * @throws AnnuletError `…-file-missing`, `…-file-unreadable` where the source or `read` throws; an AnnuletError of theirs
 *   goes on, with the place added
 */
export async function loadFile<Content>(
  { name, where, kind, hint }: NamedFile,
  files: FileSource,
  read: (content: string | Uint8Array) => Content,
): Promise<Content> {
  try {
    const content =
      typeof files === "function" ? await files(name) : Object.hasOwn(files, name) ? files[name] : undefined;
    if (content !== undefined) return read(content);
  } catch (cause) {
    if (cause instanceof AnnuletError) {
      const problems = cause.problems.map((problem) => ({ ...problem, path: problem.path ?? where }));
      throw new AnnuletError(problems, { cause });
    }
    const reason = cause instanceof Error ? cause.message : String(cause);
    throw new AnnuletError(
      {
        code: `${kind}-file-unreadable`,
        message: `the file ${name} cannot be read: ${reason}`,
        path: where,
        value: name,
      },
      { cause },
    );
  }
  throw new AnnuletError({
    code: `${kind}-file-missing`,
    message: `there is no file ${name}`,
    path: where,
    value: name,
    allowed: typeof files === "function" ? undefined : Object.keys(files).slice(0, NAMES_SHOWN).join(", ") || undefined,
    hint,
  });
}
