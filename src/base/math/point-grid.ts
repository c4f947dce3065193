/**
 * Items by their place in space, found again by what lies near: a hash of cubic cells.
 */
import type { Point3 } from "./point.js";

export class PointGrid<Item> {
  readonly #cell: number;
  readonly #cells = new Map<number, Item[]>();

  /** @param reach how far `near` must be able to look, mm, above 0 */
  constructor(reach: number) {
    this.#cell = reach;
  }

  add(point: Point3, item: Item): void {
    const key = packed(this.#cellOf(point[0]), this.#cellOf(point[1]), this.#cellOf(point[2]));
    const there = this.#cells.get(key);
    if (there === undefined) this.#cells.set(key, [item]);
    else there.push(item);
  }

  /** Every item within the reach of the point, and some a little farther. */
  near(point: Point3): Item[] {
    const i = this.#cellOf(point[0]);
    const j = this.#cellOf(point[1]);
    const k = this.#cellOf(point[2]);
    const found: Item[] = [];
    for (let x = i - 1; x <= i + 1; x++) {
      for (let y = j - 1; y <= j + 1; y++) {
        for (let z = k - 1; z <= k + 1; z++) {
          const there = this.#cells.get(packed(x, y, z));
          if (there !== undefined) for (const item of there) found.push(item);
        }
      }
    }
    return found;
  }

  #cellOf(coordinate: number): number {
    return Math.floor(coordinate / this.#cell);
  }
}

/** A cell's number along each axis, packed into one exact double as long as no axis has more cells than the radix. */
function packed(x: number, y: number, z: number): number {
  return (wrapped(x) * RADIX + wrapped(y)) * RADIX + wrapped(z);
}

/** Cells along an axis that are told apart: beyond that far, two share a number, and `near` gives the items of both. */
const RADIX = 2 ** 17;

function wrapped(cell: number): number {
  return cell & (RADIX - 1);
}
