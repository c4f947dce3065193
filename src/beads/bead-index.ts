/**
 * Beads by their place, to tell whether a map brings a set of beads onto itself.
 */
import type { Point3 } from "../base/math/point.js";
import type { Bead } from "./bead.js";

/** Cells are this many times as wide as places may differ: few beads share one, and a place is looked for in eight at most. */
const CELL = 8;

/** Cell numbers are packed into one exact double each with this many values an axis. */
const RADIX = 2 ** 17;

export class BeadIndex {
  readonly #beads: readonly Bead[];
  readonly #same: number;
  readonly #cells = new Map<number, number[]>();

  /** @param same how far apart a bead's image and another bead may be to be one, mm */
  constructor(beads: readonly Bead[], same: number) {
    this.#beads = beads;
    this.#same = same;
    beads.forEach(({ centre }, i) => {
      const key = pack(...this.#cellOf(centre, 0));
      const there = this.#cells.get(key);
      if (there === undefined) this.#cells.set(key, [i]);
      else there.push(i);
    });
  }

  /** For each bead the number of the one at its image; undefined where one has none. */
  images(map: (point: Point3) => Point3): number[] | undefined {
    const found: number[] = [];
    for (const { centre, radius } of this.#beads) {
      const image = this.#at(map(centre), radius);
      if (image === undefined) return undefined;
      found.push(image);
    }
    return found;
  }

  #at(point: Point3, radius: number): number | undefined {
    const [low, high] = [this.#cellOf(point, -this.#same), this.#cellOf(point, this.#same)];
    let [best, nearest] = [undefined as number | undefined, this.#same];
    for (let x = low[0]; x <= high[0]; x++) {
      for (let y = low[1]; y <= high[1]; y++) {
        for (let z = low[2]; z <= high[2]; z++) {
          const there = this.#cells.get(pack(x, y, z));
          if (there === undefined) continue;
          for (const i of there) {
            const { centre, radius: other } = this.#beads[i];
            const away = Math.hypot(centre[0] - point[0], centre[1] - point[1], centre[2] - point[2]);
            if (away <= nearest && Math.abs(other - radius) <= this.#same) [best, nearest] = [i, away];
          }
        }
      }
    }
    return best;
  }

  #cellOf([x, y, z]: Point3, aside: number): Point3 {
    const cell = this.#same * CELL;
    return [Math.floor((x + aside) / cell), Math.floor((y + aside) / cell), Math.floor((z + aside) / cell)];
  }
}

function pack(x: number, y: number, z: number): number {
  const half = RADIX / 2;
  return ((x + half) * RADIX + y + half) * RADIX + z + half;
}
