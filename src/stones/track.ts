/**
 * The way along which a row of stones goes, by its length on the surface in space.
 */
import type { Band } from "../band/band.js";
import type { BandSurface } from "../band/surface/surface.js";
import type { Point2, Point3 } from "../base/math/point.js";
import { TURN } from "../base/units.js";
import type { RunLine } from "../flat/runs.js";
import { isCyclic, sideAt, walkLine } from "../flat/walk-line.js";
import { squareTo } from "./frame.js";
import { railSpot, type Spot, seatSpot } from "./spot.js";

/** A line on the band. */
export interface Track {
  /** mm in space, from its first stone to its last, or all round where it closes. */
  readonly length: number;
  /** Whether its end is its beginning, or is that of the next repeat. */
  readonly closed: boolean;
  /** The spot at a length; before the start and past the end it goes on. */
  readonly spotAt: (s: number) => Spot;
  /** The same to about a nanometre, where that is much quicker; its `surface` is that of a place nearby. */
  readonly nearlyAt: (s: number) => Spot;
  /** Whether all of it is alike: a circle, or a part of one. */
  readonly even: boolean;
  /** Whether only an even number is as symmetric as the line. */
  readonly pairs: boolean;
}

/** Longest flat step over which lengths are taken as straight, mm: a chord on a ring is short by under 1e-5 of it. */
const MEASURE_STEP = 0.1;

/** A line round the finger axis: which circle, and from where to where, radians; all round without an end. */
export interface RoundLine {
  readonly band: Band;
  readonly wrap: BandSurface;
  readonly on: { readonly v: number } | { readonly rail: 0 | 1 };
  readonly from: number;
  readonly to?: number | undefined;
}

/** The track of a line round the finger axis. */
export function roundTrack({ band, wrap, on, from, to }: RoundLine): Track {
  const u = wrap.uAt(from);
  const spotOf = (angle: number): Spot =>
    "rail" in on
      ? railSpot(band, wrap, on.rail, angle)
      : seatSpot(wrap, u + (angle - from) * wrap.referenceRadius, on.v);
  const turn = to === undefined ? TURN : to - from;
  const angles = byLength(turn, turn * wrap.referenceRadius, (share) => spotOf(from + share).foot);
  const spotAt = (s: number) => spotOf(from + angles.at(s));
  const between = band.revolved ? spotAt : betweenKnots(angles.length, spotAt);
  return {
    length: angles.length,
    closed: to === undefined,
    spotAt,
    nearlyAt: between,
    even: band.revolved,
    pairs: false,
  };
}

/** The track of a flat line on the seat. */
export function seatTrack(line: RunLine, wrap: BandSurface): Track {
  const walk = walkLine(line);
  const cyclic = isCyclic(line);
  const pointAt = (flat: number): Point2 => {
    if (cyclic || (flat >= 0 && flat <= walk.length)) return walk.pointAt(flat);
    const [end, beyond] = flat < 0 ? [0, flat] : [walk.length, flat - walk.length];
    const [[u, v], [du, dv]] = [walk.pointAt(end), directionAt(end)];
    return [u + du * beyond, v + dv * beyond];
  };
  const directionAt = (flat: number): Point2 => {
    const reach = Math.min(FLAT_REACH, walk.length / 2);
    const clamped = cyclic ? flat : Math.min(Math.max(flat, reach), walk.length - reach);
    const [[au, av], [bu, bv]] = [walk.pointAt(clamped - reach), walk.pointAt(clamped + reach)];
    const size = Math.hypot(bu - au, bv - av) || 1;
    return [(bu - au) / size, (bv - av) / size];
  };
  const flats = byLength(walk.length, walk.length, (flat) => wrap.forward(...pointAt(flat), 0));
  const spotAt = (s: number) => {
    const flat = flats.at(s);
    return seatSpot(wrap, ...pointAt(flat), directionAt(flat));
  };
  return { length: flats.length, closed: cyclic, spotAt, nearlyAt: spotAt, even: false, pairs: line.even };
}

/** Knots of a smooth line stand so far apart, mm: over a radius of 10 mm, what is put between six of them is true to 1e-8 mm. */
const KNOTS = 0.25;

/** Numbers of the six knots round a place, from the one before it. */
const SIX = [-2, -1, 0, 1, 2, 3];

/** Spots between knots, by the polynomial through six of them (Lagrange's). */
function betweenKnots(length: number, spotAt: (s: number) => Spot): (s: number) => Spot {
  const count = Math.ceil(length / KNOTS);
  const knots = new Map<number, Spot>();
  const knot = (i: number) => {
    const known = knots.get(i) ?? spotAt((i * length) / count);
    knots.set(i, known);
    return known;
  };
  return (s) => {
    const first = Math.floor((s / length) * count);
    const t = (s / length) * count - first;
    const six = SIX.map((i) => knot(first + i));
    const weights = SIX.map((i) => SIX.reduce((w, j) => (i === j ? w : (w * (t - j)) / (i - j)), 1));
    const mix = (of: (spot: Spot) => Point3): Point3 => {
      const part = (k: 0 | 1 | 2) => six.reduce((sum, spot, i) => sum + weights[i] * of(spot)[k], 0);
      return [part(0), part(1), part(2)];
    };
    const out = normalized(mix((spot) => spot.out));
    return {
      surface: six[2].surface,
      foot: mix((spot) => spot.foot),
      out,
      way: squareTo(
        out,
        mix((spot) => spot.way),
      ),
    };
  };
}

function normalized([x, y, z]: Point3): Point3 {
  const length = Math.hypot(x, y, z);
  return [x / length, y / length, z / length];
}

/** Half of the span of a flat line over which its direction is taken, mm: on a corner the mean of both sides. */
const FLAT_REACH = 1e-3;

/** A parameter by length in space; before the start and past the end it goes on as it is on the whole. */
function byLength(
  end: number,
  flat: number,
  pointAt: (at: number) => Point3,
): { readonly length: number; readonly at: (s: number) => number } {
  const count = Math.max(1, Math.ceil(flat / MEASURE_STEP));
  let before = pointAt(0);
  let length = 0;
  const lengths = Array.from({ length: count + 1 }, (_, i) => {
    const point = pointAt((end * i) / count);
    length += Math.hypot(point[0] - before[0], point[1] - before[1], point[2] - before[2]);
    before = point;
    return length;
  });
  const at = (s: number) => {
    const rounds = Math.floor(s / length);
    if (rounds === 0 || s === length) return (sideAt(lengths, s) / count) * end;
    return rounds * end + (sideAt(lengths, s - rounds * length) / count) * end;
  };
  return { length, at };
}
