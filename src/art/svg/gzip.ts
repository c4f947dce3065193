/**
 * Unpacks gzip, with a limit on what comes out. RFC 1952; its check sum and length are held.
 */
import { Inflate } from "fflate";
import { AnnuletError } from "../../base/errors.js";
import { SVG_LIMITS, tooMuch } from "./svg-limits.js";

/** Bytes handed over at once: deflate makes at most 1032 of one (zlib's technical details), so 4 MB. */
const STEP = 4096;

/** Bytes of the trailer: check sum and length, 4 each, the lowest first (RFC 1952, 2.3.1). */
const TRAILER = 8;

export function isGzip(bytes: Uint8Array): boolean {
  return bytes[0] === 0x1f && bytes[1] === 0x8b;
}

/**
 * What the bytes unpack to. Never more than the limit and a step is held.
 *
 * @param where the file's place in the document, for errors
 * @throws AnnuletError `svg-too-complex`, `svg-malformed` where it is cut short, damaged or more than one file
 */
export function unpackGzip(packed: Uint8Array, where: string): Uint8Array {
  const start = headerLength(packed);
  if (start + TRAILER > packed.length) throw broken("it is cut short", where);
  const chunks: Uint8Array[] = [];
  let length = 0;
  const unpacking = new Inflate((chunk) => {
    length += chunk.length;
    if (length > SVG_LIMITS.text) {
      throw tooMuch(`unpacks to more than ${SVG_LIMITS.text} bytes`, `at most ${SVG_LIMITS.text} bytes`, where);
    }
    chunks.push(chunk);
  });
  const end = packed.length - TRAILER;
  try {
    for (let at = start; at < end; at += STEP) {
      const to = Math.min(at + STEP, end);
      unpacking.push(packed.subarray(at, to), to === end);
    }
  } catch (cause) {
    if (cause instanceof AnnuletError) throw cause;
    throw broken(cause instanceof Error ? cause.message : String(cause), where, cause);
  }
  const bytes = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  requireTrailer(packed, bytes, where);
  return bytes;
}

/** Bytes before what is packed (RFC 1952, 2.3): ten, and what the flags announce; past the end where one never ends. */
function headerLength(packed: Uint8Array): number {
  const flags = packed[3] ?? 0;
  let at = 10;
  if ((flags & EXTRA) !== 0) at += 2 + (packed[at] ?? 0) + 256 * (packed[at + 1] ?? 0);
  for (const flag of [NAME, COMMENT]) {
    if ((flags & flag) === 0) continue;
    const zero = packed.indexOf(0, at);
    at = zero === -1 ? packed.length : zero + 1;
  }
  return (flags & CHECK) === 0 ? at : at + 2;
}

const [CHECK, EXTRA, NAME, COMMENT] = [2, 4, 8, 16];

function requireTrailer(packed: Uint8Array, bytes: Uint8Array, where: string): void {
  const trailer = new DataView(packed.buffer, packed.byteOffset + packed.length - TRAILER, TRAILER);
  if (trailer.getUint32(4, true) !== bytes.length) throw broken("it is not as long as it says", where);
  if (trailer.getUint32(0, true) !== checkSum(bytes)) throw broken("its check sum is another", where);
}

/** CRC-32 (RFC 1952, 8), bit by bit. */
function checkSum(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return ~sum >>> 0;
}

function broken(reason: string, where: string, cause?: unknown): AnnuletError {
  return new AnnuletError(
    {
      code: "svg-malformed",
      message: `the packed SVG file (.svgz) is damaged: ${reason}`,
      path: where,
      allowed: "gzip that holds one SVG file",
      hint: "save the drawing again",
    },
    { cause },
  );
}
