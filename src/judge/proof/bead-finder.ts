/**
 * The beads that a column goes through: beads are sorted into boxes by their angle.
 */
import { TURN } from "../../base/units.js";
import type { Bead } from "../../beads/bead.js";
import type { Stand } from "./columns.js";

/** Angles are sorted into so many boxes (chosen: a bead or two along a fine run). */
const BOXES = 256;

export class BeadFinder {
  /** Largest diameter, mm; 0 where there are none. */
  readonly largest: number;
  readonly #beads: readonly Bead[];
  readonly #boxes: readonly number[][];
  readonly #openOf: (radius: number) => number;

  /** @param openOf how far a bead's surface may lie from its sphere, mm, by its radius */
  constructor(beads: readonly Bead[], openOf: (radius: number) => number) {
    this.#beads = beads;
    this.#openOf = openOf;
    this.#boxes = Array.from({ length: BOXES }, () => []);
    let largest = 0;
    beads.forEach(({ centre: [x, y], radius }, i) => {
      largest = Math.max(largest, 2 * radius);
      const reach = Math.asin(Math.min(1, (radius + openOf(radius)) / Math.hypot(x, y)));
      const angle = Math.atan2(y, x) + TURN;
      const last = Math.floor(((angle + reach) / TURN) * BOXES);
      for (let box = Math.floor(((angle - reach) / TURN) * BOXES); box <= last; box++) this.#boxes[box % BOXES].push(i);
    });
    this.largest = largest;
  }

  /**
   * Every bead on a column: where the column goes in and out of the larger of the two spheres between which the bead's
   * surface lies, and by how much less far apart these places may be at either end.
   */
  along(
    angle: number,
    { point: [w, r], way: [dw, dr] }: Stand,
    hit: (from: number, to: number, open: number) => void,
  ): void {
    const box = this.#boxes[Math.min(BOXES - 1, Math.floor((angle / TURN) * BOXES))];
    if (box.length === 0) return;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    for (const i of box) {
      const { centre, radius } = this.#beads[i];
      const x = centre[0] - r * cos;
      const y = centre[1] - r * sin;
      const z = centre[2] - w;
      // Off the half plane already too far.
      if (Math.abs(y * cos - x * sin) > 2 * radius) continue;
      const t = (x * cos + y * sin) * dr + z * dw;
      const beside = x * x + y * y + z * z - t * t;
      const open = this.#openOf(radius);
      const outer = (radius + open) ** 2 - beside;
      if (outer <= 0) continue;
      const inner = Math.max(0, radius - open) ** 2 - beside;
      const half = Math.sqrt(outer);
      hit(t - half, t + half, half - (inner > 0 ? Math.sqrt(inner) : 0));
    }
  }
}
