/**
 * How far inside an outline a flat point lies, and which way is in: of an outline of chords as of the smooth one that they
 * stand for, so the way in turns evenly along a chord, but at corners.
 */
import type { Point2 } from "../../../base/math/point.js";

/** Chords that turn by more meet in a corner, radians: 30°, chosen; an arc of 0.3 mm flattened to 5 µm turns by 21°. */
const CORNER = Math.PI / 6;

/** A chord of an outline, which has its inside on its left, with the way in at both of its ends. */
export interface Side {
  readonly from: Point2;
  readonly to: Point2;
  readonly inFrom: Point2;
  readonly inTo: Point2;
}

/** The chords of an outline. */
export function sidesOf(ring: readonly Point2[]): Side[] {
  const count = ring.length;
  const inward = ring.map(([u, v], i): Point2 => {
    const [nextU, nextV] = ring[(i + 1) % count];
    const length = Math.hypot(nextU - u, nextV - v) || 1;
    return [(v - nextV) / length, (nextU - u) / length];
  });
  const between = (a: Point2, b: Point2, own: Point2): Point2 => {
    const [u, v] = [a[0] + b[0], a[1] + b[1]];
    const length = Math.hypot(u, v);
    return length < 2 * Math.cos(CORNER / 2) ? own : [u / length, v / length];
  };
  return ring.map((from, i) => ({
    from,
    to: ring[(i + 1) % count],
    inFrom: between(inward[(i + count - 1) % count], inward[i], inward[i]),
    inTo: between(inward[i], inward[(i + 1) % count], inward[i]),
  }));
}

/** Where a point lies inside an outline. */
export interface Inset {
  /** mm from the nearest chord. */
  readonly distance: number;
  /** The unit way in. */
  readonly way: Point2;
}

/** Sides by place, so that only those within a reach are asked. */
export class SideGrid {
  readonly #cells = new Map<string, Side[]>();
  readonly #cell: number;
  readonly #reach: number;

  /** @param reach mm, above 0: insets up to this are found */
  constructor(sides: readonly Side[], reach: number) {
    this.#reach = reach;
    this.#cell = Math.max(reach, LEAST_CELL);
    for (const side of sides) {
      const [[u0, v0], [u1, v1]] = [side.from, side.to];
      for (let i = this.#at(Math.min(u0, u1) - reach); i <= this.#at(Math.max(u0, u1) + reach); i++) {
        for (let j = this.#at(Math.min(v0, v1) - reach); j <= this.#at(Math.max(v0, v1) + reach); j++) {
          const there = this.#cells.get(`${i} ${j}`);
          if (there === undefined) this.#cells.set(`${i} ${j}`, [side]);
          else there.push(side);
        }
      }
    }
  }

  /** Undefined outside of the outline, or farther in than the reach. */
  insetAt(u: number, v: number): Inset | undefined {
    let found: Inset | undefined;
    for (const { from, to, inFrom, inTo } of this.#cells.get(`${this.#at(u)} ${this.#at(v)}`) ?? []) {
      const [du, dv] = [to[0] - from[0], to[1] - from[1]];
      const share = ((u - from[0]) * du + (v - from[1]) * dv) / (du * du + dv * dv || 1);
      const held = Math.min(1, Math.max(0, share));
      const [offU, offV] = [u - from[0] - held * du, v - from[1] - held * dv];
      const distance = Math.hypot(offU, offV);
      if (distance > (found?.distance ?? this.#reach)) continue;
      if (offV * du - offU * dv < -OUTSIDE * Math.hypot(du, dv)) continue;
      const along = shareOf([u - from[0], v - from[1]], [du, dv], inFrom, inTo);
      const way = [inFrom[0] + along * (inTo[0] - inFrom[0]), inFrom[1] + along * (inTo[1] - inFrom[1])];
      const length = Math.hypot(way[0], way[1]) || 1;
      found = { distance, way: [way[0] / length, way[1] / length] };
    }
    return found;
  }

  #at(coordinate: number): number {
    return Math.floor(coordinate / this.#cell);
  }
}

/**
 * At which share of a chord the way in, which turns from one end to the other, meets a point: off the chord's start. Exact
 * where the two ways differ along the chord, as those of an arc do.
 */
function shareOf([u, v]: Point2, [du, dv]: Point2, inFrom: Point2, inTo: Point2): number {
  const start = u * inFrom[1] - v * inFrom[0];
  const end = (u - du) * inTo[1] - (v - dv) * inTo[0];
  return start === end ? 0 : Math.min(1, Math.max(0, start / (start - end)));
}

/** Cells are no smaller, mm. */
const LEAST_CELL = 0.2;

/** A point so far outside a chord is still on it, mm: about what unions and float32 move points by. */
const OUTSIDE = 1e-3;
