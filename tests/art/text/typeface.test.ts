// Covers: src/art/text/sfnt.ts, src/art/text/woff.ts
import { deflateSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { setText } from "../../../src/art/text/set-text.js";
import { FONT_LIMITS } from "../../../src/art/text/sfnt.js";
import { openTypeface, type Typeface } from "../../../src/art/text/typeface.js";
import { AnnuletError } from "../../../src/base/errors.js";
import { bytesOf, type FontName, typefaceOf } from "../../support/fonts.js";

const SEED = 20261125;
const WHERE = "lettering[0].font";
const open = (bytes: Uint8Array) => openTypeface({ bytes, name: "reed.ttf", where: WHERE });

async function codeOf(bytes: Uint8Array): Promise<string | undefined> {
  try {
    const face = await open(bytes);
    setText(face, "Reed", { height: 2, where: "text" });
    return undefined;
  } catch (error) {
    if (error instanceof AnnuletError) return error.code;
    throw error;
  }
}

/** The tables of an OpenType file by tag, read by hand: OpenType specification 1.9. */
function tablesOf(bytes: Uint8Array): Map<string, DataView> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return new Map(
    Array.from({ length: view.getUint16(4) }, (_, i) => {
      const at = 12 + 16 * i;
      const tag = String.fromCharCode(...bytes.subarray(at, at + 4));
      const [offset, length] = [view.getUint32(at + 8), view.getUint32(at + 12)];
      return [tag, new DataView(bytes.buffer, bytes.byteOffset + offset, length)];
    }),
  );
}

/** The same font as WOFF 1.0, tables packed by zlib. */
function asWoff(bytes: Uint8Array, lie = 0): Uint8Array {
  const tables = [...tablesOf(bytes)];
  const directory = new DataView(new ArrayBuffer(44 + 20 * tables.length));
  const source = new DataView(bytes.buffer, bytes.byteOffset);
  directory.setUint32(0, 0x774f4646);
  directory.setUint32(4, source.getUint32(0));
  directory.setUint16(12, tables.length);
  let at = directory.byteLength;
  const packed = tables.map(([tag, { buffer, byteOffset, byteLength }], i) => {
    const plain = new Uint8Array(buffer, byteOffset, byteLength);
    const small = deflateSync(plain);
    const data = small.length < plain.length ? small : plain;
    const record = 44 + 20 * i;
    [...tag].forEach((letter, k) => {
      directory.setUint8(record + k, letter.charCodeAt(0));
    });
    directory.setUint32(record + 4, at);
    directory.setUint32(record + 8, data.length);
    directory.setUint32(record + 12, data === plain ? plain.length : plain.length + lie);
    at += data.length;
    return data;
  });
  const file = new Uint8Array(at);
  file.set(new Uint8Array(directory.buffer));
  let place = directory.byteLength;
  for (const data of packed) {
    file.set(data, place);
    place += data.length;
  }
  return file;
}

/** The highest y of a letter's outline: corners and control points at extremes. */
function highestOf(face: Typeface, letter: string): number {
  const [{ glyph }] = face.shape(letter, "ltr", { ligatures: true });
  return Math.max(...[...face.outline(glyph).matchAll(/,(-?\d+(?:\.\d+)?)/g)].map(([, y]) => Number(y)));
}

/** What the letter H measures, in thousandths of the em; tables say 705, 637, … */
const CAPITALS: Readonly<Record<FontName, number>> = { nunito: 714, alegreya: 649, hebrew: 714, amiri: 646 };

const advances = (face: Typeface, text: string) =>
  face.shape(text, "ltr", { ligatures: true }).map(({ advance }) => advance);

describe("a font", () => {
  it.each<FontName>(["nunito", "alegreya", "hebrew", "amiri"])(
    "%s has the em that its tables name, and capitals as high as its H",
    async (font) => {
      const face = await typefaceOf(font);
      const tables = tablesOf(bytesOf(font));
      expect(face.unitsPerEm).toBe(tables.get("head")?.getUint16(18));
      expect(face.capHeight).toBe(highestOf(face, "H"));
      expect(face.capHeight).toBe(CAPITALS[font]);
    },
  );

  it("sets single letters by the widths of its table hmtx, and pairs nearer by its kerning", async () => {
    const face = await typefaceOf("nunito");
    const hmtx = tablesOf(bytesOf("nunito")).get("hmtx");
    for (const letter of "AVTo") {
      const [{ glyph, advance }] = face.shape(letter, "ltr", { ligatures: true });
      expect(advance).toBe(hmtx?.getUint16(4 * glyph));
    }
    const sum = (text: string) => advances(face, text).reduce((a, b) => a + b, 0);
    for (const pair of ["AV", "To"]) expect(sum(pair)).toBeLessThan(sum(pair[0]) + sum(pair[1]) - 20);
    expect(sum("HH")).toBe(2 * sum("H"));
  });

  it("as WOFF sets the same", async () => {
    const [plain, packed] = [await open(bytesOf("alegreya")), await open(asWoff(bytesOf("alegreya")))];
    const text = "Reedbed fi AVA";
    expect(setText(packed, text, { height: 2, where: "" })).toEqual(setText(plain, text, { height: 2, where: "" }));
  });
});

describe("a file that is no usable font is refused", () => {
  it.each([
    ["empty", new Uint8Array(0), "font-kind-unknown"],
    ["of zeros", new Uint8Array(5000), "font-kind-unknown"],
    ["a PNG", Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]), "font-kind-unknown"],
    ["WOFF2", new TextEncoder().encode("wOF2 and more"), "font-kind-unknown"],
    ["a collection", new TextEncoder().encode("ttcf and more"), "font-kind-unknown"],
    ["a directory alone", new TextEncoder().encode("OTTO"), "font-broken"],
    ["of 100 MB", new Uint8Array(100e6), "font-too-large"],
    ["WOFF that lies about its tables", asWoff(bytesOf("nunito"), 4), "font-broken"],
    ["WOFF that unpacks to too much", asWoff(bytesOf("nunito"), FONT_LIMITS.bytes), "font-too-large"],
    ["WOFF cut short", asWoff(bytesOf("nunito")).subarray(0, 9000), "font-broken"],
  ])("%s", async (_, bytes, code) => {
    expect(await codeOf(bytes)).toBe(code);
  });

  it("cut anywhere", async () => {
    const bytes = bytesOf("nunito");
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 0, max: bytes.length - 4 }), async (length) => {
        expect(await codeOf(bytes.subarray(0, length))).toMatch(/^font-/);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it("and one with bytes gone wrong sets something or says what is wrong", async () => {
    const bytes = bytesOf("alegreya");
    const hurt = fc.array(fc.tuple(fc.nat(bytes.length - 1), fc.nat(255)), { minLength: 1, maxLength: 400 });
    await fc.assert(
      fc.asyncProperty(hurt, async (changes) => {
        const copy = Uint8Array.from(bytes);
        for (const [at, value] of changes) copy[at] = value;
        expect([
          undefined,
          "font-broken",
          "font-kind-unknown",
          "glyph-missing",
          "glyph-without-outline",
          "font-too-complex",
        ]).toContain(await codeOf(copy));
      }),
      { seed: SEED, numRuns: 60 },
    );
  });
});
