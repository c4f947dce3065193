/**
 * Looks a PNG file over before it is decoded: that its pieces are whole, that it is not larger than it may be, and that
 * what is compressed holds exactly the bytes that its header promises. Only what pixels are made of is handed on.
 */
import { type ImageHeader, rawLength, readHeader } from "./header.js";
import { brokenImage, IMAGE_LIMITS, tooLargeImage } from "./image-limits.js";

export interface VettedImage {
  readonly header: ImageHeader;
  /** A PNG file of nothing but header, palette, transparency and pixels. */
  readonly bytes: Uint8Array;
}

/** The first eight bytes of every PNG file (section 5.2). */
const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** Bytes round the data of a chunk: its length and name before it, its checksum after it (section 5.3). */
const BEFORE = 8;
const AFTER = 4;

const HEADER_LENGTH = 13;

interface Chunk {
  readonly name: string;
  /** From its length to its checksum. */
  readonly whole: Uint8Array;
  readonly data: Uint8Array;
}

/**
 * Checks a file.
 *
 * @param where the file's place in the document, for errors
 * @throws AnnuletError `image-not-png`, `image-too-large`, `image-broken`
 */
export async function vetImage(bytes: Uint8Array, where: string): Promise<VettedImage> {
  if (bytes.length > IMAGE_LIMITS.bytes) {
    throw tooLargeImage(`file has ${bytes.length} bytes`, `at most ${IMAGE_LIMITS.bytes} bytes`, where);
  }
  const [first, ...rest] = splitChunks(bytes, where);
  if (first?.name !== "IHDR" || first.data.length !== HEADER_LENGTH) throw brokenImage("has no header", where);
  const header = readHeader(viewOf(first.data), where);
  const kept = [first, ...rest.filter(({ name }) => name === "PLTE" || name === "tRNS")];
  const pixels = rest.filter(({ name }) => name === "IDAT");
  if (header.colour === "palette" && !kept.some(({ name }) => name === "PLTE")) {
    throw brokenImage("has no palette, though its pixels are numbers in one", where);
  }
  await requireLength(
    pixels.map(({ data }) => data),
    rawLength(header),
    where,
  );
  const end = rest.filter(({ name }) => name === "IEND");
  return {
    header,
    bytes: join([bytes.subarray(0, BEFORE), ...[...kept, ...pixels, ...end].map(({ whole }) => whole)]),
  };
}

/** The pieces up to the end piece. */
function splitChunks(bytes: Uint8Array, where: string): Chunk[] {
  if (SIGNATURE.some((byte, i) => bytes[i] !== byte)) throw brokenImage("is no PNG file", where);
  const view = viewOf(bytes);
  const chunks: Chunk[] = [];
  let at = SIGNATURE.length;
  while (chunks.at(-1)?.name !== "IEND") {
    if (chunks.length === IMAGE_LIMITS.chunks) {
      throw tooLargeImage("has too many pieces", `at most ${IMAGE_LIMITS.chunks}`, where);
    }
    if (at + BEFORE + AFTER > bytes.length) throw brokenImage("ends before it is whole", where);
    const length = view.getUint32(at);
    const end = at + BEFORE + length + AFTER;
    if (end > bytes.length) throw brokenImage("ends before it is whole", where);
    const name = String.fromCharCode(...bytes.subarray(at + 4, at + BEFORE));
    // A capital first letter marks what no reader may pass over (section 5.4).
    if (/^[A-Z]/.test(name) && !CRITICAL.has(name))
      throw brokenImage(`has a piece ${JSON.stringify(name)} that PNG does not know`, where);
    chunks.push({ name, whole: bytes.subarray(at, end), data: bytes.subarray(at + BEFORE, end - AFTER) });
    at = end;
  }
  return chunks;
}

const CRITICAL = new Set(["IHDR", "PLTE", "IDAT", "IEND"]);

/** Unpacks the pixels once without keeping them, no further than one step beyond the length. */
async function requireLength(parts: readonly Uint8Array[], length: number, where: string): Promise<void> {
  const reader = new Blob(parts.map((part) => part.slice()))
    .stream()
    .pipeThrough(new DecompressionStream("deflate"))
    .getReader();
  let total = 0;
  try {
    for (let next = await reader.read(); !next.done && total <= length; next = await reader.read()) {
      total += next.value.length;
    }
  } catch (cause) {
    throw brokenImage("holds pixels that cannot be unpacked", where, cause);
  } finally {
    await reader.cancel().catch(() => undefined);
  }
  if (total === length) return;
  const found = total > length ? "more" : "fewer";
  throw brokenImage(`holds ${found} pixels than it says`, where);
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

function join(parts: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
