/**
 * The lift of a strand over its whole width: each place takes that of the nearest place of the centre line.
 *
 * The line is smoothed first, so that the places beside a sharp corner follow each other without a jump.
 */
import { nearestShare } from "../../base/math/nearest-share.js";
import type { Point2 } from "../../base/math/point.js";
import type { Walk } from "../../flat/walk-line.js";
import { type Bridge, shareAt } from "./bridge.js";

/** What is added to the height of a body's upper surface. */
export interface Rise {
  /** mm at a place of the seat. */
  readonly at: (u: number, v: number) => number;
  /** mm above the seat from which on the surface rises by the whole of it; from there down to the seat ever less. */
  readonly from: number;
  /** No edge of the mesh is longer than this where it rises, mm. */
  readonly step: number;
  /** Largest deviation of the mesh from it, mm. */
  readonly tolerance: number;
}

/** A span of a centre line that is lifted. */
export interface LiftedLine {
  readonly walk: Walk;
  /** From where to where along it, mm; on a closed one the end may lie past its length. */
  readonly span: readonly [from: number, to: number];
  readonly bridges: readonly Bridge[];
}

/** Samples of a line stand this far apart, in ribbon widths, and are means over this many widths of it. */
const SAMPLE_WIDTHS = 0.08;
const SMOOTH_WIDTHS = 1;
const MEAN_OF = 9;

/** Edges where a body rises are no longer than this share of its shortest run. */
const STEP_SHARE = 0.25;

export interface RiseOptions {
  readonly lift: number;
  /** Ribbon width, mm. */
  readonly width: number;
  readonly from: number;
  readonly tolerance: number;
}

/** The rise over a ribbon on these lines; undefined where none of them is lifted. */
export function riseAlong(
  lines: readonly LiftedLine[],
  { lift, width, from, tolerance }: RiseOptions,
): Rise | undefined {
  const runs = lines.flatMap(({ bridges }) => bridges.flatMap(({ before, after }) => [before, after]));
  if (runs.length === 0) return undefined;
  const sampled = lines.map((line) => ({ line, samples: new Samples(sample(line, width)) }));
  const at = (u: number, v: number) => {
    let [best, share] = [Number.POSITIVE_INFINITY, 0];
    for (const { line, samples } of sampled) {
      const found = samples.nearest(u, v, best);
      if (found !== undefined) [best, share] = [found.away, shareAt(line.bridges, found.s)];
    }
    return lift * share;
  };
  return { at, from, step: STEP_SHARE * Math.min(...runs), tolerance };
}

interface Sample {
  readonly s: number;
  readonly point: Point2;
}

function sample({ walk, span: [from, to] }: LiftedLine, width: number): Sample[] {
  const count = Math.max(2, Math.ceil((to - from) / (SAMPLE_WIDTHS * width)));
  return Array.from({ length: count + 1 }, (_, i): Sample => {
    const s = from + ((to - from) * i) / count;
    let [u, v] = [0, 0];
    for (let k = 0; k < MEAN_OF; k++) {
      const [x, y] = walk.pointAt(s + width * SMOOTH_WIDTHS * (k / (MEAN_OF - 1) - 0.5));
      u += x / MEAN_OF;
      v += y / MEAN_OF;
    }
    return { s, point: [u, v] };
  });
}

/** Neighbouring sides that share a box: a place far from the box is compared with none of them. */
const SIDES_A_BOX = 8;

/** Room for rounding, as a share of a square: sides that seem farther by less are worked out. */
const NEARLY = 1 + 1e-12;

/** A sampled line, for the place of it that is nearest to a point. */
class Samples {
  readonly #us: Float64Array;
  readonly #vs: Float64Array;
  readonly #ways: Float64Array;
  /** Of each run of sides the least u and v and the largest u and v, in turn, mm. */
  readonly #boxes: Float64Array;

  constructor(samples: readonly Sample[]) {
    this.#us = Float64Array.from(samples, ({ point }) => point[0]);
    this.#vs = Float64Array.from(samples, ({ point }) => point[1]);
    this.#ways = Float64Array.from(samples, ({ s }) => s);
    this.#boxes = new Float64Array(4 * Math.ceil((samples.length - 1) / SIDES_A_BOX));
    for (let box = 0; box < this.#boxes.length / 4; box++) {
      const [from, to] = [box * SIDES_A_BOX, (box + 1) * SIDES_A_BOX + 1];
      const [us, vs] = [this.#us.subarray(from, to), this.#vs.subarray(from, to)];
      this.#boxes.set([Math.min(...us), Math.min(...vs), Math.max(...us), Math.max(...vs)], 4 * box);
    }
  }

  /** The nearest place, its distance and its way along the line, mm; undefined where nothing is nearer than `within`. */
  nearest(u: number, v: number, within: number): { readonly away: number; readonly s: number } | undefined {
    const boxes = this.#boxes;
    const square = this.#squareWithin(u, v, within);
    let [away, s] = [within, Number.NaN];
    for (let box = 0; box < boxes.length / 4; box++) {
      if (this.#squareToBox(box, u, v) > square) continue;
      const end = Math.min((box + 1) * SIDES_A_BOX, this.#us.length - 1);
      for (let i = box * SIDES_A_BOX; i < end; i++) {
        const dx = this.#us[i + 1] - this.#us[i];
        const dy = this.#vs[i + 1] - this.#vs[i];
        const pu = u - this.#us[i];
        const pv = v - this.#vs[i];
        const t = nearestShare(pu, pv, dx, dy);
        const x = pu - t * dx;
        const y = pv - t * dy;
        if (x * x + y * y > square) continue;
        const distance = Math.hypot(x, y);
        if (distance >= away) continue;
        away = distance;
        s = this.#ways[i] + t * (this.#ways[i + 1] - this.#ways[i]);
      }
    }
    return away < within ? { away, s } : undefined;
  }

  /** A square that the nearest place's distance does not exceed: that of a point of the line in the nearest box. */
  #squareWithin(u: number, v: number, within: number): number {
    let [nearest, least] = [0, Number.POSITIVE_INFINITY];
    for (let box = 0; box < this.#boxes.length / 4; box++) {
      const square = this.#squareToBox(box, u, v);
      if (square < least) [nearest, least] = [box, square];
    }
    let best = within * within;
    const end = Math.min((nearest + 1) * SIDES_A_BOX, this.#us.length - 1);
    for (let i = nearest * SIDES_A_BOX; i <= end; i++) {
      const du = this.#us[i] - u;
      const dv = this.#vs[i] - v;
      best = Math.min(best, du * du + dv * dv);
    }
    return best * NEARLY;
  }

  #squareToBox(box: number, u: number, v: number): number {
    const boxes = this.#boxes;
    const du = Math.max(boxes[4 * box] - u, u - boxes[4 * box + 2], 0);
    const dv = Math.max(boxes[4 * box + 1] - v, v - boxes[4 * box + 3], 0);
    return du * du + dv * dv;
  }
}
