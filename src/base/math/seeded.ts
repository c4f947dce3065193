/**
 * Numbers that look like chance and follow from a seed: whole 32-bit arithmetic alone, so every machine has the same.
 *
 * Each is asked for by what it belongs to, not drawn from a row, so that no order of work changes it. The mixing is the
 * finaliser of MurmurHash3 (Austin Appleby, public domain; constants from memory).
 */

const WORDS = 2 ** 32;

/** Odd, with its bits spread: 2³² over the golden ratio. */
const SPREAD = 0x9e3779b9;

/** A number from 0 up to, not including, 1. Seed, index and channel are whole, 0 to 2³² − 1. */
export function seeded(seed: number, index: number, channel: number): number {
  return mix(mix(mix(Math.imul(seed + 1, SPREAD)) ^ index) ^ Math.imul(channel + 1, SPREAD)) / WORDS;
}

function mix(word: number): number {
  let mixed = word;
  mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
  return (mixed ^ (mixed >>> 16)) >>> 0;
}
