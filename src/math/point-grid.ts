/**
 * Items by their place in space, found again by what lies near: a hash of cubic cells.
 */
import type { Point3 } from "./point.js";

export class PointGrid<Item> {
  readonly #cell: number;
  readonly #cells = new Map<string, Item[]>();

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
    for (const x of [-1, 0, 1]) {
      for (const y of [-1, 0, 1]) {
        for (const z of [-1, 0, 1]) found.push(...(this.#cells.get(this.#key(point, x, y, z)) ?? []));
      }
    }
    return found;
  }

  #key([x, y, z]: Point3, dx: number, dy: number, dz: number): string {
    const cell = this.#cell;
    return `${Math.floor(x / cell) + dx},${Math.floor(y / cell) + dy},${Math.floor(z / cell) + dz}`;
  }
}
