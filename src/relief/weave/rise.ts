/**
 * The lift of a strand over its whole width: each place takes that of the nearest place of the centre line.
 *
 * The line is smoothed first, so that the places beside a sharp corner follow each other without a jump.
 */
import { nearestShare } from "../../base/math/nearest-share.js";
import type { Point2 } from "../../base/math/point.js";
import type { Walk } from "../../flat/walk.js";
import { type Bridge, shareAt } from "./lift.js";

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

/** A stretch of a centre line that is lifted. */
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
  const sampled = lines.map((line) => ({ line, samples: sample(line, width) }));
  const at = (u: number, v: number) => {
    let [best, share] = [Number.POSITIVE_INFINITY, 0];
    for (const { line, samples } of sampled) {
      const { away, s } = nearest(samples, u, v);
      if (away < best) [best, share] = [away, shareAt(line.bridges, s)];
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

function nearest(samples: readonly Sample[], u: number, v: number): { readonly away: number; readonly s: number } {
  let best = { away: Number.POSITIVE_INFINITY, s: 0 };
  for (let i = 0; i + 1 < samples.length; i++) {
    const [a, b] = [samples[i], samples[i + 1]];
    const [dx, dy] = [b.point[0] - a.point[0], b.point[1] - a.point[1]];
    const [pu, pv] = [u - a.point[0], v - a.point[1]];
    const t = nearestShare(pu, pv, dx, dy);
    const away = Math.hypot(pu - t * dx, pv - t * dy);
    if (away < best.away) best = { away, s: a.s + t * (b.s - a.s) };
  }
  return best;
}
