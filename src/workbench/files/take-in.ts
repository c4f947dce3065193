/**
 * Files that are opened, dropped or pasted: designs, and the art that designs name.
 */
import { artLimit } from "../../toolbox/index.js";
import { type DesignFiles, withFile } from "../state/design-files.js";
import { readText } from "../state/json-text.js";

/** Largest design, bytes: as the command line's. */
const MOST_DESIGN_BYTES = 5e6;

/** What a file is to the page: the least that is asked of it. */
export type Dropped = Pick<File, "name" | "size" | "arrayBuffer">;

/** Why a file is not taken. */
export type Refused = "too-large" | "no-design" | "unknown-kind" | "unreadable";

/** What came in. */
export interface TakenIn {
  /** The first design among the files. */
  readonly design: { readonly text: string; readonly fileName: string } | undefined;
  /** The files with the art that came. */
  readonly files: DesignFiles;
  /** What the art is called in a design, in the order in which it came. */
  readonly art: readonly string[];
  readonly refused: readonly { readonly name: string; readonly why: Refused }[];
}

/**
 * Reads files, and says which cannot be taken.
 *
 * @param files what there is already
 */
export async function takeIn(dropped: readonly Dropped[], files: DesignFiles): Promise<TakenIn> {
  let [design, now]: [TakenIn["design"], DesignFiles] = [undefined, files];
  const art: string[] = [];
  const refused: { name: string; why: Refused }[] = [];
  for (const file of dropped) {
    const read = await readOne(file);
    if (typeof read === "string") refused.push({ name: file.name, why: read });
    else if ("text" in read) design ??= { text: read.text, fileName: file.name };
    else {
      const added = withFile(now, file.name, read.bytes);
      now = added.files;
      art.push(added.name);
    }
  }
  return { design, files: now, art, refused };
}

async function readOne(file: Dropped): Promise<{ text: string } | { bytes: Uint8Array } | Refused> {
  const isDesign = /\.json$/i.test(file.name);
  const limit = isDesign ? MOST_DESIGN_BYTES : artLimit(file.name);
  if (limit === undefined) return "unknown-kind";
  if (file.size > limit) return "too-large";
  const bytes = await file.arrayBuffer().then(
    (buffer) => new Uint8Array(buffer),
    () => undefined,
  );
  if (bytes === undefined) return "unreadable";
  if (!isDesign) return { bytes };
  const text = new TextDecoder().decode(bytes);
  return isDesignText(text) ? { text } : "no-design";
}

/** Whether a text is taken as a design: it may have errors, but is an object in JSON with a field of a design's. */
export function isDesignText(text: string): boolean {
  if (text.length > MOST_DESIGN_BYTES) return false;
  const read = readText(text);
  return "value" in read && ["annulet", "size", "profile"].some((field) => Object.hasOwn(read.value, field));
}
