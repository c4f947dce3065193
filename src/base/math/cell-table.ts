/**
 * Numbers of items by the cubic cell in which they lie: a hash table in typed arrays, since one of objects takes several times
 * as long to fill and to ask, and leaves as much garbage.
 *
 * Cells are hashed as by Teschner and others, Optimized Spatial Hashing for Collision Detection of Deformable Objects, 2003.
 */

/** Its three primes. */
const PRIMES = [73_856_093, 19_349_663, 83_492_791] as const;

/** Slots at first; twice as many whenever half of them are taken. */
const FEW = 64;

export class CellTable {
  /** For each slot the number of its cell; −1 where it is free. */
  #slots = new Int32Array(FEW).fill(-1);
  /** Places of the cells, three numbers each. */
  #places = new Int32Array((3 * FEW) / 2);
  /** First and last item of each cell. */
  #first = new Int32Array(FEW / 2);
  #last = new Int32Array(FEW / 2);
  #cells = 0;
  /** The item after each one in its cell; −1 after the last. */
  #next = new Int32Array(FEW);
  #items = 0;

  /** Puts one more item into a cell: the first is number 0. Numbers of cells are integers of 32 bits. */
  add(x: number, y: number, z: number): void {
    const item = this.#items++;
    if (item === this.#next.length) this.#next = grown(this.#next);
    this.#next[item] = -1;
    const slot = this.#slotOf(x, y, z);
    const cell = this.#slots[slot];
    if (cell === -1) this.#begin(slot, x, y, z, item);
    else {
      this.#next[this.#last[cell]] = item;
      this.#last[cell] = item;
    }
  }

  /** The first item of a cell; −1 where it has none. */
  first(x: number, y: number, z: number): number {
    const cell = this.#slots[this.#slotOf(x, y, z)];
    return cell === -1 ? -1 : this.#first[cell];
  }

  /** The next item of the same cell, in the order in which they were added; −1 after the last. */
  next(item: number): number {
    return this.#next[item];
  }

  #begin(slot: number, x: number, y: number, z: number, item: number): void {
    const cell = this.#cells++;
    this.#slots[slot] = cell;
    this.#places[3 * cell] = x;
    this.#places[3 * cell + 1] = y;
    this.#places[3 * cell + 2] = z;
    this.#first[cell] = this.#last[cell] = item;
    if (this.#cells < this.#first.length) return;
    this.#places = grown(this.#places);
    this.#first = grown(this.#first);
    this.#last = grown(this.#last);
    this.#slots = new Int32Array(2 * this.#slots.length).fill(-1);
    for (let i = 0; i < this.#cells; i++) {
      this.#slots[this.#slotOf(this.#places[3 * i], this.#places[3 * i + 1], this.#places[3 * i + 2])] = i;
    }
  }

  /** Where a cell stands, or would stand. */
  #slotOf(x: number, y: number, z: number): number {
    const mask = this.#slots.length - 1;
    let hash = Math.imul(x, PRIMES[0]) ^ Math.imul(y, PRIMES[1]) ^ Math.imul(z, PRIMES[2]);
    hash ^= hash >>> 15;
    for (let slot = hash & mask; ; slot = (slot + 1) & mask) {
      const cell = this.#slots[slot];
      if (cell === -1) return slot;
      const at = 3 * cell;
      if (this.#places[at] === (x | 0) && this.#places[at + 1] === (y | 0) && this.#places[at + 2] === (z | 0)) {
        return slot;
      }
    }
  }
}

function grown(list: Int32Array<ArrayBuffer>): Int32Array<ArrayBuffer> {
  const longer = new Int32Array(2 * list.length);
  longer.set(list);
  return longer;
}
