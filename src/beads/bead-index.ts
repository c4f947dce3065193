/**
 * Beads by their place, to tell whether a map brings a set of beads onto itself.
 */
import type { Point3 } from "../base/math/point.js";
import type { Bead } from "./bead.js";

/** Cells are this many times as wide as places may differ: few beads share one, and a place is looked for in eight at most. */
const CELL = 8;

/**
 * Radii may differ by this share of what places may: where beads stand follows from flattened curves, how large they are from
 * the document, and beads by turns of two sizes are meant so (chosen).
 */
export const SIZE_SHARE = 0.1;

/** Cell numbers are packed into one exact double each with this many values an axis. */
const RADIX = 2 ** 17;

export class BeadIndex {
  readonly #beads: readonly Bead[];
  readonly #same: number;
  readonly #sameSize: number;
  readonly #cells = new Map<number, number[]>();

  /** @param same how far apart a bead's image and another bead may be to be one, mm */
  constructor(beads: readonly Bead[], same: number) {
    this.#beads = beads;
    this.#same = same;
    this.#sameSize = SIZE_SHARE * same;
    beads.forEach(({ centre: [x, y, z] }, i) => {
      const key = pack(this.#cellOf(x), this.#cellOf(y), this.#cellOf(z));
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

  #at([px, py, pz]: Point3, radius: number): number | undefined {
    const same = this.#same;
    const [lastX, lastY, lastZ] = [this.#cellOf(px + same), this.#cellOf(py + same), this.#cellOf(pz + same)];
    const [firstY, firstZ] = [this.#cellOf(py - same), this.#cellOf(pz - same)];
    let best: number | undefined;
    let nearest = same;
    for (let x = this.#cellOf(px - same); x <= lastX; x++) {
      for (let y = firstY; y <= lastY; y++) {
        for (let z = firstZ; z <= lastZ; z++) {
          const there = this.#cells.get(pack(x, y, z));
          if (there === undefined) continue;
          for (const i of there) {
            const { centre, radius: other } = this.#beads[i];
            const away = Math.hypot(centre[0] - px, centre[1] - py, centre[2] - pz);
            if (away > nearest || Math.abs(other - radius) > this.#sameSize) continue;
            best = i;
            nearest = away;
          }
        }
      }
    }
    return best;
  }

  #cellOf(coordinate: number): number {
    return Math.floor(coordinate / (this.#same * CELL));
  }
}

function pack(x: number, y: number, z: number): number {
  const half = RADIX / 2;
  return ((x + half) * RADIX + y + half) * RADIX + z + half;
}
