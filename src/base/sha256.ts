/**
 * SHA-256 (FIPS 180-4) of a text in UTF-8, hexadecimal. Browsers have it only in secure contexts, and never at once.
 */

/** First 32 bits of the fractional parts of the cube roots of the first 64 primes (FIPS 180-4, 4.2.2). */
const ROUND_CONSTANTS = Uint32Array.from(primes(64), (prime) => fraction(Math.cbrt(prime)));

/** Of the square roots of the first 8 (5.3.3). */
const START = Uint32Array.from(primes(8), (prime) => fraction(Math.sqrt(prime)));

/** Bytes of a block, and of the length at the end of the last one. */
const BLOCK = 64;
const LENGTH_BYTES = 8;

export function sha256(text: string): string {
  const message = new TextEncoder().encode(text);
  const blocks = Math.ceil((message.length + 1 + LENGTH_BYTES) / BLOCK);
  const padded = new Uint8Array(blocks * BLOCK);
  padded.set(message);
  padded[message.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setBigUint64(padded.length - LENGTH_BYTES, BigInt(message.length) * 8n);
  const hash = START.slice();
  const schedule = new Uint32Array(BLOCK);
  for (let at = 0; at < padded.length; at += BLOCK) takeBlock(hash, schedule, view, at);
  return Array.from(hash, (word) => word.toString(16).padStart(8, "0")).join("");
}

/** 6.2.2, with the names of the standard. */
function takeBlock(hash: Uint32Array, w: Uint32Array, view: DataView, at: number): void {
  for (let t = 0; t < 16; t++) w[t] = view.getUint32(at + 4 * t);
  for (let t = 16; t < BLOCK; t++) {
    const [early, late] = [w[t - 15], w[t - 2]];
    const s0 = turned(early, 7) ^ turned(early, 18) ^ (early >>> 3);
    const s1 = turned(late, 17) ^ turned(late, 19) ^ (late >>> 10);
    w[t] = w[t - 16] + s0 + w[t - 7] + s1;
  }
  let [a, b, c, d, e, f, g, h] = hash;
  for (let t = 0; t < BLOCK; t++) {
    const s1 = turned(e, 6) ^ turned(e, 11) ^ turned(e, 25);
    const t1 = (h + s1 + ((e & f) ^ (~e & g)) + ROUND_CONSTANTS[t] + w[t]) | 0;
    const s0 = turned(a, 2) ^ turned(a, 13) ^ turned(a, 22);
    const t2 = (s0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + t1) | 0, c, b, a, (t1 + t2) | 0];
  }
  [a, b, c, d, e, f, g, h].forEach((word, i) => {
    hash[i] += word;
  });
}

/** Bits turned to the right. */
function turned(word: number, by: number): number {
  return (word >>> by) | (word << (32 - by));
}

function fraction(root: number): number {
  return Math.floor((root % 1) * 2 ** 32);
}

function primes(count: number): number[] {
  const found: number[] = [];
  for (let n = 2; found.length < count; n++) if (found.every((prime) => n % prime !== 0)) found.push(n);
  return found;
}
