/**
 * Boxes packed into a tree, so that those which meet a box are found without looking at all.
 *
 * Sort-tile-recursive packing (Leutenegger, Lopez, Edgington 1997): sorted along x into slices, each slice along y, then
 * grouped by a fixed number, and the groups again.
 */
import type { GridBox } from "./box.js";

/** Boxes in a group (chosen). */
const FANOUT = 8;

/** A group: the box about `FANOUT` consecutive entries of the level below. */
type Level = readonly GridBox[];

export class BoxTree {
  /** Which of the given boxes stands at each place of the lowest level. */
  readonly #order: readonly number[];
  /** The packed boxes, then their groups up to a level that is one group. */
  readonly #levels: readonly Level[];

  /** Packs the boxes in n log n. */
  constructor(boxes: readonly GridBox[]) {
    this.#order = packed(boxes);
    const levels: Level[] = [this.#order.map((i) => boxes[i])];
    while (levels[levels.length - 1].length > FANOUT) levels.push(grouped(levels[levels.length - 1]));
    this.#levels = levels;
  }

  /** The numbers of the boxes that meet this one, its border among it, in no order. */
  meeting(box: GridBox): number[] {
    const found: number[] = [];
    const top = this.#levels.length - 1;
    this.#look(box, top, 0, this.#levels[top].length, found);
    return found;
  }

  #look(box: GridBox, level: number, from: number, to: number, found: number[]): void {
    const entries = this.#levels[level];
    for (let i = from; i < to; i++) {
      if (!meet(entries[i], box)) continue;
      if (level === 0) found.push(this.#order[i]);
      else this.#look(box, level - 1, i * FANOUT, Math.min((i + 1) * FANOUT, this.#levels[level - 1].length), found);
    }
  }
}

/** Whether two boxes have a point in common. */
function meet(a: GridBox, b: GridBox): boolean {
  return a.left <= b.right && b.left <= a.right && a.low <= b.high && b.low <= a.high;
}

function packed(boxes: readonly GridBox[]): number[] {
  const byX = boxes.map((_, i) => i).sort((a, b) => boxes[a].left + boxes[a].right - boxes[b].left - boxes[b].right);
  const slice = FANOUT * Math.max(1, Math.ceil(Math.sqrt(boxes.length / FANOUT)));
  const order: number[] = [];
  for (let i = 0; i < byX.length; i += slice) {
    const part = byX.slice(i, i + slice);
    for (const at of part.sort((a, b) => boxes[a].low + boxes[a].high - boxes[b].low - boxes[b].high)) order.push(at);
  }
  return order;
}

function grouped(entries: Level): Level {
  return Array.from({ length: Math.ceil(entries.length / FANOUT) }, (_, group) => {
    let { left, right, low, high } = entries[group * FANOUT];
    for (const box of entries.slice(group * FANOUT + 1, (group + 1) * FANOUT)) {
      left = Math.min(left, box.left);
      right = Math.max(right, box.right);
      low = Math.min(low, box.low);
      high = Math.max(high, box.high);
    }
    return { left, right, low, high };
  });
}
