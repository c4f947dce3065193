/**
 * The fields of a design document that say which text is set, and how.
 */
import { z } from "zod";

/** Longest text, characters; a chosen limit, above what goes round a finger. */
const MAX_TEXT_LENGTH = 200;

/** What names a font that an npm package carries: `package:` and its path there, package first. */
const PACKAGE_FONT = "package:";

/**
 * The font where none is named: an OFL font that annulet's own dependency carries. Of its weights this one
 * has the widest strokes but one: thin strokes are what small letters are cast badly for; common practice, no source.
 */
export const DEFAULT_FONT = `${PACKAGE_FONT}@expo-google-fonts/nunito/800ExtraBold/Nunito_800ExtraBold.ttf`;

/** Defaults; spacing in mm. */
const TEXT_DEFAULTS = { font: DEFAULT_FONT, spacing: 0 } as const;

/** The fields that say which text is set and how. */
export const textFields = {
  text: z
    .string()
    .min(1)
    .max(MAX_TEXT_LENGTH)
    .describe(`one line of one direction, 1 to ${MAX_TEXT_LENGTH} characters`),
  font: z
    .string()
    .min(1)
    .max(300)
    .default(TEXT_DEFAULTS.font)
    .describe(
      "OpenType, TrueType or WOFF file beside the design, or package: and its path in an npm package; default Nunito ExtraBold",
    ),
  spacing: z
    .number()
    .min(-5)
    .max(20)
    .default(TEXT_DEFAULTS.spacing)
    .describe("mm added between letters, -5 to 20; default 0"),
};
