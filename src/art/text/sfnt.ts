/**
 * Looks a font file over before it is used: what kind of file it is, that its tables lie within it, and that those which
 * setting a text needs are there. OpenType specification 1.9, "OpenType font file": a directory of 16-byte records
 * (tag, checksum, offset, length) behind a header of 12 bytes; table `head` for the units of an em.
 */
import { ART_BYTES } from "../../base/art-files.js";
import { AnnuletError } from "../../base/errors.js";

/** Limits on font files; all chosen. */
export const FONT_LIMITS = {
  /** Largest file, and largest font once unpacked, bytes. */
  bytes: ART_BYTES.font,
  /** Most tables; fonts have 10 to 30. */
  tables: 200,
} as const;

/** Units of an em that the specification allows, table `head`. */
const UNITS_PER_EM = [16, 16_384] as const;

/** Kinds of files by their first four bytes. */
const FONT_TAGS: readonly string[] = ["\0\x01\0\0", "OTTO", "true"];
const OTHER_TAGS: Readonly<Record<string, string>> = {
  wOF2: "a WOFF2 file",
  ttcf: "a collection of several fonts",
  "%!PS": "a PostScript font",
  "<svg": "an SVG drawing",
  "<?xm": "an XML file",
  "\x89PNG": "a PNG image",
  "PK\x03\x04": "a zip archive",
};

/** The tables without which no text can be set; of each line, one. */
const NEEDED: readonly (readonly string[])[] = [
  ["head"],
  ["maxp"],
  ["cmap"],
  ["hhea"],
  ["hmtx"],
  ["glyf", "CFF ", "CFF2"],
];

/** A font file and the place where the document names it. */
export interface FontFile {
  readonly bytes: Uint8Array;
  readonly name: string;
  readonly where: string;
}

/** @throws AnnuletError `font-too-large` */
export function requireFontSize({ bytes, ...file }: FontFile): void {
  if (bytes.length <= FONT_LIMITS.bytes) return;
  throw fontTooLarge(file, bytes.length);
}

export function fontTooLarge({ name, where }: Omit<FontFile, "bytes">, value: number): AnnuletError {
  return new AnnuletError({
    code: "font-too-large",
    message: `the font ${name} is too large`,
    path: where,
    value,
    allowed: `at most ${FONT_LIMITS.bytes / 1e6} MB`,
    hint: "a font for one script takes far less; cut it down to the characters that are needed",
  });
}

/**
 * Checks an OpenType or TrueType file.
 *
 * @throws AnnuletError `font-kind-unknown`, `font-broken`
 */
export function checkSfnt(file: FontFile): void {
  const { bytes } = file;
  const tag = tagAt(bytes, 0);
  if (!FONT_TAGS.includes(tag)) throw unknownKind(file, OTHER_TAGS[tag] ?? "no font");
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = bytes.length < HEADER ? 0 : view.getUint16(4);
  if (count === 0 || count > FONT_LIMITS.tables || bytes.length < HEADER + count * RECORD) {
    throw brokenFont(file, `its directory of ${count} tables does not fit it`);
  }
  const tables = new Map<string, number>();
  for (let i = 0; i < count; i++) {
    const record = HEADER + i * RECORD;
    const [offset, length] = [view.getUint32(record + 8), view.getUint32(record + 12)];
    const name = tagAt(bytes, record);
    if (offset + length > bytes.length) throw brokenFont(file, `its table ${JSON.stringify(name)} goes beyond its end`);
    tables.set(name, offset);
  }
  const missing = NEEDED.find((names) => !names.some((name) => tables.has(name)));
  if (missing !== undefined) throw brokenFont(file, `it has no table ${missing.map((one) => one.trim()).join(" or ")}`);
  const head = tables.get("head") ?? 0;
  const units = head + UNITS_OFFSET + 2 > bytes.length ? 0 : view.getUint16(head + UNITS_OFFSET);
  if (units < UNITS_PER_EM[0] || units > UNITS_PER_EM[1]) throw brokenFont(file, `its em has ${units} units`);
}

/** Bytes of the header and of a table's record, and where in `head` the units of an em stand. */
const [HEADER, RECORD, UNITS_OFFSET] = [12, 16, 18];

/** Four characters at an offset. */
export function tagAt(bytes: Uint8Array, offset: number): string {
  return String.fromCharCode(...bytes.subarray(offset, offset + 4));
}

function unknownKind({ name, where }: FontFile, what: string): AnnuletError {
  return new AnnuletError({
    code: "font-kind-unknown",
    message: `${name} is ${what}, not a font that can be used`,
    path: where,
    value: name,
    allowed: "an OpenType or TrueType font (.ttf, .otf), or one as WOFF",
    hint: "fonts that come as WOFF2 or as a collection are usually there as .ttf or .otf too",
  });
}

/** The error for a font whose bytes are not what they should be. */
export function brokenFont({ name, where }: Omit<FontFile, "bytes">, why: string): AnnuletError {
  return new AnnuletError({
    code: "font-broken",
    message: `the font ${name} is broken: ${why}`,
    path: where,
    value: name,
    hint: "take the file from its source again",
  });
}
