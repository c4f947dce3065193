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
  const count = positions.length / 3;
  const clean = new Float64Array(positions.length);
  for (let i = 0; i < positions.length; i++) clean[i] = positions[i] + 0;
  const bits = new Uint32Array(clean.buffer);
  const table = new Int32Array(tableSize(count)).fill(-1);
  const mask = table.length - 1;
  const indexOf = new Uint32Array(count);
  let kept = 0;
  for (let point = 0; point < count; point++) {
    let slot = hashBits(bits, point * 6) & mask;
    while (table[slot] !== -1 && !sameBits(bits, table[slot] * 6, point * 6)) slot = (slot + 1) & mask;
    if (table[slot] === -1) {
      // Points are moved down inside the same array: a kept point never stands after the one being read.
      clean.copyWithin(kept * 3, point * 3, point * 3 + 3);
      table[slot] = kept++;
    }
    indexOf[point] = table[slot];
  }
  return { indexOf, positions: clean.slice(0, kept * 3) };
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

function hashBits(bits: Uint32Array, at: number): number {
  let h = 0;
  for (let i = 0; i < 6; i++) h = Math.imul(h, 31) + mixBits(bits[at + i] + i);
  return mixBits(h | 0);
}

function sameBits(bits: Uint32Array, a: number, b: number): boolean {
  for (let i = 0; i < 6; i++) if (bits[a + i] !== bits[b + i]) return false;
  return true;
}
