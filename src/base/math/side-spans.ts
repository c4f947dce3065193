/**
 * The parts of a side that other sides cover, as shares of it: 0 at its start, 1 at its end. Written in plain numbers, since many
 * sides are asked.
 */

/** Shares of a side this close are one, so that rounding leaves no gap. Chosen: far below any reach. */
const ROUNDING = 1e-9;

export class SideSpans {
  readonly #reach: number;
  readonly #lows: number[] = [];
  readonly #highs: number[] = [];
  #ax = 0;
  #ay = 0;
  #ex = 0;
  #ey = 0;
  #low = 0;
  #high = 0;

  /** @param reach how far the side may lie from what covers it */
  constructor(reach: number) {
    this.#reach = reach;
  }

  /** Another side: nothing of it is covered yet. */
  begin(): void {
    this.#lows.length = 0;
    this.#highs.length = 0;
  }

  /** Where the side now stands, and how far it goes on from there. */
  place(ax: number, ay: number, ex: number, ey: number): void {
    this.#ax = ax;
    this.#ay = ay;
    this.#ex = ex;
    this.#ey = ey;
  }

  /**
   * Adds the part of the side that lies within reach of another side: what is near a side is convex, so it is one span.
   *
   * @param places x and y of both its ends, from `at` on
   * @returns whether that is all of it
   */
  addNear(places: Float64Array, at: number): boolean {
    const cx = places[at];
    const cy = places[at + 1];
    const dx = places[at + 2];
    const dy = places[at + 3];
    const ex = this.#ex;
    const ey = this.#ey;
    const px = this.#ax - cx;
    const py = this.#ay - cy;
    this.#low = Number.POSITIVE_INFINITY;
    this.#high = Number.NEGATIVE_INFINITY;
    this.#inDisc(px, py);
    this.#inDisc(this.#ax - dx, this.#ay - dy);
    const length = Math.sqrt((dx - cx) * (dx - cx) + (dy - cy) * (dy - cy));
    if (length > 0) {
      const tx = (dx - cx) / length;
      const ty = (dy - cy) / length;
      this.#beside(px * tx + py * ty, ex * tx + ey * ty, length, tx * py - ty * px, tx * ey - ty * ex);
    }
    if (this.#low > this.#high) return false;
    this.#lows.push(this.#low);
    this.#highs.push(this.#high);
    return this.#low <= ROUNDING && this.#high >= 1 - ROUNDING;
  }

  /** Whether the spans leave nothing out between 0 and 1. */
  fill(): boolean {
    const lows = this.#lows;
    const order = Array.from(lows.keys()).sort((a, b) => lows[a] - lows[b]);
    let reached = 0;
    for (const i of order) {
      if (lows[i] > reached + ROUNDING) return false;
      reached = Math.max(reached, this.#highs[i]);
      if (reached >= 1 - ROUNDING) return true;
    }
    return false;
  }

  #widen(low: number, high: number): void {
    if (low > high) return;
    if (low < this.#low) this.#low = low;
    if (high > this.#high) this.#high = high;
  }

  /** Shares of the side from (px, py) that lie within the reach of the origin. */
  #inDisc(px: number, py: number): void {
    const ex = this.#ex;
    const ey = this.#ey;
    const a = ex * ex + ey * ey;
    const b = px * ex + py * ey;
    const c = px * px + py * py - this.#reach * this.#reach;
    if (a === 0) {
      if (c <= 0) this.#widen(0, 1);
      return;
    }
    const root = b * b - a * c;
    if (root < 0) return;
    this.#widen(Math.max(0, (-b - Math.sqrt(root)) / a), Math.min(1, (-b + Math.sqrt(root)) / a));
  }

  /**
   * Shares from 0 to 1 at which a point stands beside the other side, within the reach: `along` it and `aside` at first, mm or grid
   * steps, and by how much that changes over the whole.
   */
  #beside(along: number, alongStep: number, length: number, aside: number, asideStep: number): void {
    let low = 0;
    let high = 1;
    if (alongStep === 0) {
      if (along < 0 || along > length) return;
    } else {
      const first = -along / alongStep;
      const second = (length - along) / alongStep;
      low = Math.max(low, Math.min(first, second));
      high = Math.min(high, Math.max(first, second));
    }
    if (asideStep === 0) {
      if (aside < -this.#reach || aside > this.#reach) return;
    } else {
      const first = (-this.#reach - aside) / asideStep;
      const second = (this.#reach - aside) / asideStep;
      low = Math.max(low, Math.min(first, second));
      high = Math.min(high, Math.max(first, second));
    }
    this.#widen(low, high);
  }
}
