/**
 * Finds equal points by hashing the bits of their coordinates (open addressing, linear probing, typed arrays only).
 */

/** Which points are the same. */
export interface MergedPoints {
  /** For each old point the index of its new one. */
  readonly indexOf: Uint32Array;
  /** The new points in order of first appearance, x, y, z in turn, mm; −0 has become 0. */
  readonly positions: Float64Array;
}

/** Merges points whose three coordinates are bitwise equal; −0 counts as 0. Order of first appearance is kept. */
export function mergeEqualPoints(positions: Float64Array): MergedPoints {
  return mergeByBits(new Float64Array(positions));
}

/** Merges points whose three coordinates are the same once rounded to float32, and gives them rounded. */
export function mergeRoundedPoints(positions: Float64Array | Float32Array): MergedPoints {
  return mergeByBits(new Float32Array(positions));
}

/** The points rounded to float32, where no two of them then are the same; undefined where some are. */
export function roundDistinctPoints(positions: Float64Array): Float64Array | undefined {
  const rounded = new Float32Array(positions);
  for (let i = 0; i < rounded.length; i++) rounded[i] += 0;
  const bits = new Uint32Array(rounded.buffer);
  const table = new Int32Array(tableSize(rounded.length / 3)).fill(-1);
  const mask = table.length - 1;
  for (let at = 0; at < bits.length; at += 3) {
    const x = bits[at];
    const y = bits[at + 1];
    const z = bits[at + 2];
    let slot = hashWords(x, y, z) & mask;
    for (; table[slot] !== -1; slot = (slot + 1) & mask) {
      const other = table[slot];
      if (bits[other] === x && bits[other + 1] === y && bits[other + 2] === z) return undefined;
    }
    table[slot] = at;
  }
  return new Float64Array(rounded);
}

/** Smallest power of two that keeps a hash table of `count` entries at most half full. */
export function tableSize(count: number): number {
  return 2 ** Math.ceil(Math.log2(Math.max(count, 1) * 2));
}

/** Spreads the bits of a 32-bit number: the finaliser of MurmurHash3 (A. Appleby, public domain). */
export function mixBits(value: number): number {
  let h = value;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/** Points that the table has room for at first. */
const FIRST_ROOM = 4096;

/** @param clean is changed: −0 becomes 0 */
function mergeByBits(clean: Float32Array | Float64Array): MergedPoints {
  for (let i = 0; i < clean.length; i++) clean[i] += 0;
  const bits = new Uint32Array(clean.buffer);
  const words = (3 * clean.BYTES_PER_ELEMENT) / bits.BYTES_PER_ELEMENT;
  const count = clean.length / 3;
  const indexOf = new Uint32Array(count);
  /** Old index of each new point. */
  const first = new Uint32Array(count);
  // The table grows with the points that are kept: of a file's triangle corners five in six are not, and a table with room
  // for all of them would leave the processor's cache.
  let table = new Int32Array(tableSize(Math.min(count, FIRST_ROOM))).fill(-1);
  let mask = table.length - 1;
  let kept = 0;
  for (let point = 0; point < count; point++) {
    if (2 * kept === table.length) {
      table = new Int32Array(2 * table.length).fill(-1);
      mask = table.length - 1;
      for (let i = 0; i < kept; i++) {
        let slot = hashBits(bits, first[i] * words, words) & mask;
        while (table[slot] !== -1) slot = (slot + 1) & mask;
        table[slot] = i;
      }
    }
    let slot = hashBits(bits, point * words, words) & mask;
    while (table[slot] !== -1 && !sameBits(bits, first[table[slot]] * words, point * words, words)) {
      slot = (slot + 1) & mask;
    }
    if (table[slot] === -1) {
      first[kept] = point;
      table[slot] = kept++;
    }
    indexOf[point] = table[slot];
  }
  return { indexOf, positions: kept === count ? new Float64Array(clean) : pick(clean, first.subarray(0, kept)) };
}

function pick(coordinates: Float32Array | Float64Array, points: Uint32Array): Float64Array {
  const picked = new Float64Array(3 * points.length);
  for (let i = 0; i < points.length; i++) {
    for (let k = 0; k < 3; k++) picked[3 * i + k] = coordinates[3 * points[i] + k];
  }
  return picked;
}

/** 2³² over the golden ratio, made odd: multiplying by it spreads bits upward (D. Knuth, TAOCP 3, §6.4). */
const SPREAD = 0x9e3779b1;

function hashBits(bits: Uint32Array, at: number, words: number): number {
  let h = 0;
  for (let i = 0; i < words; i++) {
    h = Math.imul(h ^ bits[at + i], SPREAD);
    h ^= h >>> 15;
  }
  return mixBits(h);
}

/** The hash of three words, as `hashBits` makes it. */
function hashWords(x: number, y: number, z: number): number {
  let h = Math.imul(x, SPREAD);
  h = Math.imul(h ^ (h >>> 15) ^ y, SPREAD);
  h = Math.imul(h ^ (h >>> 15) ^ z, SPREAD);
  return mixBits(h ^ (h >>> 15));
}

function sameBits(bits: Uint32Array, a: number, b: number, words: number): boolean {
  for (let i = 0; i < words; i++) if (bits[a + i] !== bits[b + i]) return false;
  return true;
}
