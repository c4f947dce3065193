/**
 * Beads by their place, to tell whether a map brings a set of beads onto itself.
 */
import type { AboutAxis } from "../base/math/about-axis.js";
import { CellTable } from "../base/math/cell-table.js";
import type { Bead } from "./bead.js";

/** Cells are this many times as wide as places may differ: few beads share one, and a place is looked for in eight at most. */
const CELL = 8;

/**
 * Radii may differ by this share of what places may: where beads stand follows from flattened curves, how large they are from
 * the document, and beads by turns of two sizes are meant so (chosen).
 */
export const SIZE_SHARE = 0.1;

export class BeadIndex {
  readonly #beads: readonly Bead[];
  readonly #same: number;
  readonly #cells = new CellTable();

  /** @param same how far apart a bead's image and another bead may be to be one, mm */
  constructor(beads: readonly Bead[], same: number) {
    this.#beads = beads;
    this.#same = same;
    for (const { centre } of beads) {
      this.#cells.add(this.#cellOf(centre[0]), this.#cellOf(centre[1]), this.#cellOf(centre[2]));
    }
  }

  /** For each bead the number of the one at its image; undefined where one has none. */
  images({ a, b, c, d, e }: AboutAxis): Int32Array | undefined {
    const found = new Int32Array(this.#beads.length);
    for (let i = 0; i < found.length; i++) {
      const { centre, radius } = this.#beads[i];
      const x = centre[0];
      const y = centre[1];
      const at = this.#at(a * x + b * y, c * x + d * y, e * centre[2], radius);
      if (at === -1) return undefined;
      found[i] = at;
    }
    return found;
  }

  /** The nearest bead of a size at a place; −1 where none is near enough. */
  #at(px: number, py: number, pz: number, radius: number): number {
    const same = this.#same;
    const sameSize = SIZE_SHARE * same;
    const cells = this.#cells;
    const lastX = this.#cellOf(px + same);
    const lastY = this.#cellOf(py + same);
    const lastZ = this.#cellOf(pz + same);
    const firstY = this.#cellOf(py - same);
    const firstZ = this.#cellOf(pz - same);
    let best = -1;
    let nearest = same;
    for (let x = this.#cellOf(px - same); x <= lastX; x++) {
      for (let y = firstY; y <= lastY; y++) {
        for (let z = firstZ; z <= lastZ; z++) {
          for (let i = cells.first(x, y, z); i !== -1; i = cells.next(i)) {
            const { centre, radius: other } = this.#beads[i];
            const dx = centre[0] - px;
            const dy = centre[1] - py;
            const dz = centre[2] - pz;
            const away = Math.sqrt(dx * dx + dy * dy + dz * dz);
            if (away > nearest || Math.abs(other - radius) > sameSize) continue;
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
