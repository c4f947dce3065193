/**
 * WOFF 1.0 (W3C Recommendation, 13 December 2012) → OpenType: a header of 44 bytes, a directory of 20-byte records (tag,
 * offset, packed length, length, checksum), tables packed with zlib where that made them smaller.
 */
import { brokenFont, FONT_LIMITS, type FontFile, fontTooLarge, tagAt } from "./sfnt.js";

/** Bytes of WOFF's header and records, and of OpenType's. */
const [HEADER, RECORD, SFNT_HEADER, SFNT_RECORD] = [44, 20, 12, 16];

export function isWoff(bytes: Uint8Array): boolean {
  return tagAt(bytes, 0) === "wOFF";
}

/**
 * The font inside a WOFF file.
 *
 * @throws AnnuletError `font-broken`; `font-too-large` before anything is unpacked
 */
export async function unpackWoff(file: FontFile): Promise<Uint8Array> {
  const { bytes } = file;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = bytes.length < HEADER ? 0 : view.getUint16(12);
  if (count === 0 || count > FONT_LIMITS.tables || bytes.length < HEADER + count * RECORD) {
    throw brokenFont(file, `its directory of ${count} tables does not fit it`);
  }
  const records = Array.from({ length: count }, (_, i) => {
    const at = HEADER + i * RECORD;
    const [offset, packed, length] = [view.getUint32(at + 4), view.getUint32(at + 8), view.getUint32(at + 12)];
    const tag = tagAt(bytes, at);
    if (offset + packed > bytes.length || packed > length) {
      throw brokenFont(file, `its table ${JSON.stringify(tag)} does not fit it`);
    }
    return { at, tag, offset, packed, length };
  });
  const total = SFNT_HEADER + count * SFNT_RECORD + records.reduce((sum, { length }) => sum + padded(length), 0);
  if (total > FONT_LIMITS.bytes) throw fontTooLarge(file, total);
  const font = new Uint8Array(total);
  const out = new DataView(font.buffer);
  out.setUint32(0, view.getUint32(4));
  out.setUint16(4, count);
  let place = SFNT_HEADER + count * SFNT_RECORD;
  for (const [i, { at, tag, offset, packed, length }] of records.entries()) {
    const stored = bytes.subarray(offset, offset + packed);
    const table = packed === length ? stored : await inflate(stored, length);
    if (table?.length !== length) throw brokenFont(file, `its table ${JSON.stringify(tag)} does not unpack`);
    const record = SFNT_HEADER + i * SFNT_RECORD;
    font.set(bytes.subarray(at, at + 4), record);
    out.setUint32(record + 4, view.getUint32(at + 16));
    out.setUint32(record + 8, place);
    out.setUint32(record + 12, length);
    font.set(table, place);
    place += padded(length);
  }
  return font;
}

/** Tables begin on multiples of four bytes. */
function padded(length: number): number {
  return 4 * Math.ceil(length / 4);
}

/** Unpacks zlib data; undefined where it is broken or longer than it says: unpacking stops there. */
async function inflate(packed: Uint8Array, length: number): Promise<Uint8Array | undefined> {
  const reader = new Blob([Uint8Array.from(packed)])
    .stream()
    .pipeThrough(new DecompressionStream("deflate"))
    .getReader();
  const table = new Uint8Array(length);
  let at = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return at === length ? table : undefined;
      if (at + value.length > length) {
        await reader.cancel();
        return undefined;
      }
      table.set(value, at);
      at += value.length;
    }
  } catch {
    return undefined;
  }
}
