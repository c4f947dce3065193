/** Fonts under the SIL Open Font License that packages in node_modules carry. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { openTypeface, type Typeface } from "../../src/art/text/typeface.js";

/** Family, weight and path of each. */
export const FONTS = {
  nunito: { family: "Nunito", weight: 800, path: "nunito/800ExtraBold/Nunito_800ExtraBold.ttf" },
  alegreya: { family: "Alegreya", weight: 700, path: "alegreya/700Bold/Alegreya_700Bold.ttf" },
  hebrew: { family: "Noto Sans Hebrew", weight: 700, path: "noto-sans-hebrew/700Bold/NotoSansHebrew_700Bold.ttf" },
  amiri: { family: "Amiri", weight: 700, path: "amiri/700Bold/Amiri_700Bold.ttf" },
} as const;

export type FontName = keyof typeof FONTS;

/** The name by which a design names the font. */
export function nameOf(font: FontName): string {
  return `package:@expo-google-fonts/${FONTS[font].path}`;
}

export function pathOf(font: FontName): string {
  return fileURLToPath(new URL(`../../node_modules/@expo-google-fonts/${FONTS[font].path}`, import.meta.url));
}

export function bytesOf(font: FontName): Uint8Array {
  return Uint8Array.from(readFileSync(pathOf(font)));
}

export function typefaceOf(font: FontName): Promise<Typeface> {
  return openTypeface({ bytes: bytesOf(font), name: FONTS[font].path, where: "lettering[0].font" });
}

/** The files of a design that names these fonts. */
export const fontFiles: Readonly<Record<string, Uint8Array>> = Object.fromEntries(
  (Object.keys(FONTS) as FontName[]).map((font) => [nameOf(font), bytesOf(font)]),
);
