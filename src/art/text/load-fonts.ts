/**
 * Loads the fonts that a design names.
 */
import { AnnuletError } from "../../base/errors.js";
import { type FileSource, loadFile } from "../../base/files.js";
import { openTypeface, type Typeface } from "./typeface.js";

/** A font's name and where it stands in the document. */
export interface FontUse {
  readonly name: string;
  readonly where: string;
}

/**
 * The fonts by name; each file is read once.
 *
 * @throws AnnuletError `font-file-missing`, `font-file-unreadable`, what the source throws, and as `openTypeface`
 */
export async function loadFonts(uses: readonly FontUse[], files: FileSource): Promise<ReadonlyMap<string, Typeface>> {
  const fonts = new Map<string, Typeface>();
  for (const { name, where } of uses) {
    if (fonts.has(name)) continue;
    const bytes = await loadFile({ name, where, kind: "font", hint: HINT }, files, (content) => content);
    if (typeof bytes === "string") throw asText(name, where);
    fonts.set(name, await openTypeface({ bytes, name, where }));
  }
  return fonts;
}

const HINT =
  "hand its bytes to build as files, name → bytes; the command line looks beside the design, and in packages for names that begin with package:";

function asText(name: string, where: string): AnnuletError {
  return new AnnuletError({
    code: "font-kind-unknown",
    message: `${name} was handed over as text, and a font is bytes`,
    path: where,
    value: name,
    allowed: "a Uint8Array with the font file's bytes",
  });
}
