/**
 * Loads the fonts that a design names.
 */
import { AnnuletError } from "../../base/errors.js";
import { type FileSource, loadFile } from "../../base/files.js";
import { openTypeface, type Typeface } from "./typeface.js";

/** What names a font that an npm package carries: `package:` and its path there, package first. */
export const PACKAGE_FONT = "package:";

/**
 * The font where none is named: an OFL font that annulet's own dependency carries. Of its weights this one
 * has the widest strokes but one: thin strokes are what small letters are cast badly for; common practice, no source.
 */
export const DEFAULT_FONT = `${PACKAGE_FONT}@expo-google-fonts/nunito/800ExtraBold/Nunito_800ExtraBold.ttf`;

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
