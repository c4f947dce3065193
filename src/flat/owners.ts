/**
 * Which part of a region a ring belongs to: the smallest outer ring about it.
 */
import { type GridBox, ringBox } from "./box.js";
import { BoxTree } from "./box-tree.js";
import type { GridPath } from "./grid.js";
import { contains, type GridRegion, ringArea } from "./polygons.js";

interface Outer {
  readonly ring: GridPath;
  readonly area: number;
}

export class Owners {
  /** The region's outer rings, smallest first. */
  readonly outers: readonly GridPath[];
  readonly #sized: readonly Outer[];
  readonly #tree: BoxTree;

  constructor(region: GridRegion) {
    this.#sized = region
      .map((ring): Outer => ({ ring, area: ringArea(ring) }))
      .filter(({ area }) => area > 0)
      .sort((a, b) => a.area - b.area);
    this.outers = this.#sized.map(({ ring }) => ring);
    this.#tree = new BoxTree(this.outers.map(ringBox));
  }

  /**
   * The number, in `outers`, of the smallest one that is no smaller than the ring and holds its first point; undefined
   * where none does.
   */
  ownerOf(ring: GridPath): number | undefined {
    const size = Math.abs(ringArea(ring));
    return this.#tree
      .meeting(pointBox(ring))
      .sort((a, b) => a - b)
      .find((i) => this.#sized[i].area >= size && contains(this.#sized[i].ring, ring[0]));
  }
}

function pointBox([{ x, y }]: GridPath): GridBox {
  return { left: x, right: x, low: y, high: y };
}
