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
    const key = this.#key(point, 0, 0, 0);
    const there = this.#cells.get(key);
    if (there === undefined) this.#cells.set(key, [item]);
    else there.push(item);
  }

  /** Every item within the reach of the point, and some a little farther. */
  near(point: Point3): Item[] {
    const found: Item[] = [];
    for (let x = -1; x <= 1; x++) {
      for (let y = -1; y <= 1; y++) {
        for (let z = -1; z <= 1; z++) {
          const there = this.#cells.get(this.#key(point, x, y, z));
          if (there !== undefined) for (const item of there) found.push(item);
        }
      }
    }
    return found;
  }

  /** The cell's number along each axis, packed into one exact double as long as no axis has more cells than the radix. */
  #key([x, y, z]: Point3, dx: number, dy: number, dz: number): number {
    const cell = this.#cell;
    const [i, j, k] = [Math.floor(x / cell) + dx, Math.floor(y / cell) + dy, Math.floor(z / cell) + dz];
    return (wrapped(i) * RADIX + wrapped(j)) * RADIX + wrapped(k);
  }
}

/** Cells along an axis that are told apart: beyond that far, two share a number, and `near` gives the items of both. */
const RADIX = 2 ** 17;

function wrapped(cell: number): number {
  return cell & (RADIX - 1);
}
