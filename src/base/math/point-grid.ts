/**
 * Items by their place in space, found again by what lies near: a hash of cubic cells.
 */
import { CellTable } from "./cell-table.js";
import type { Point3 } from "./point.js";

export class PointGrid<Item> {
  readonly #cell: number;
  readonly #cells = new CellTable();
  readonly #items: Item[] = [];

  /** @param reach how far `near` must be able to look, mm, above 0 */
  constructor(reach: number) {
    this.#cell = reach;
  }

  add(point: Point3, item: Item): void {
    this.#cells.add(this.#cellOf(point[0]), this.#cellOf(point[1]), this.#cellOf(point[2]));
    this.#items.push(item);
  }

  /** Every item within the reach of the point, and some a little farther. */
  near(point: Point3): Item[] {
    const i = this.#cellOf(point[0]);
    const j = this.#cellOf(point[1]);
    const k = this.#cellOf(point[2]);
    const cells = this.#cells;
    const found: Item[] = [];
    for (let x = i - 1; x <= i + 1; x++) {
      for (let y = j - 1; y <= j + 1; y++) {
        for (let z = k - 1; z <= k + 1; z++) {
          for (let at = cells.first(x, y, z); at !== -1; at = cells.next(at)) found.push(this.#items[at]);
        }
      }
    }
    return found;
  }

  #cellOf(coordinate: number): number {
    return Math.floor(coordinate / this.#cell);
  }
}
