/**
 * The font that stands where a design names none, for programs that hand it over themselves, as a server does to browsers.
 */
import { DEFAULT_FONT } from "../design/art/text-fields.js";
import { fileSource } from "./file-source.js";

/** A font under the name by which designs ask for it. */
export interface DefaultFont {
  /** The key for `files`. */
  readonly name: string;
  /** Of the font file, TrueType. */
  readonly bytes: Uint8Array;
}

/**
 * Reads the font of texts whose design names none.
 *
 * @throws AnnuletError `package-missing` where annulet has been installed without its fonts
 *
 * @example
 * const { name, bytes } = defaultFont();
 * const { mesh } = await build(document, { files: { [name]: bytes } });
 */
export function defaultFont(): DefaultFont {
  return { name: DEFAULT_FONT, bytes: fileSource()(DEFAULT_FONT) };
}
