/**
 * Where strands cross each other and themselves.
 *
 * Strands are compared side by side, sorted along the band. A crossing counts only where the one goes from side to side of
 * the other, so that ends which touch and lines that graze are none.
 */
import { AnnuletError } from "../../base/errors.js";
import type { Point2 } from "../../base/math/point.js";
import type { Walk } from "../../flat/walk-line.js";

/** A centre line in mm, and the ribbon on it. */
export interface Strand {
  readonly walk: Walk;
  readonly closed: boolean;
  /** Ribbon width, mm. */
  readonly width: number;
  /** Number of its region among those that are woven together. */
  readonly member: number;
}

/** A strand's way through a crossing. */
export interface Pass {
  /** Number of the strand. */
  readonly strand: number;
  /** mm along it. */
  readonly s: number;
  /** Its line's angle, radians, 0 to π. */
  readonly angle: number;
}

export interface Crossing {
  /** mm */
  readonly at: Point2;
  readonly passes: readonly [Pass, Pass];
}

/** Points nearer than this are one crossing, mm; lines are felt to either side of it over the second length. */
export const SAME_PLACE = 0.01;
const FEEL = 0.05;

/** Most pairs of sides that are compared, and most crossings: far above any weave that can be cast, below what stalls. */
const MOST_PAIRS = 2e7;
const MOST_CROSSINGS = 5000;

/**
 * All crossings between two u, mm.
 *
 * @param path where the weave stands in the document, for errors
 * @throws AnnuletError `weave-too-fine`
 */
export function findCrossings(strands: readonly Strand[], [low, high]: Point2, path: string): Crossing[] {
  const sides = sidesOf(strands, low, high);
  const found: Crossing[] = [];
  let pairs = 0;
  for (let i = 0; i < sides.length; i++) {
    for (let j = i + 1; j < sides.length && sides[j].left <= sides[i].right; j++) {
      pairs++;
      if (sides[j].low > sides[i].high || sides[j].high < sides[i].low) continue;
      const crossing = crossingOf(strands, sides[i], sides[j]);
      if (crossing === undefined || found.some((other) => isSame(other, crossing))) continue;
      found.push(crossing);
      if (found.length > MOST_CROSSINGS) throw tooFine(path);
    }
    if (pairs > MOST_PAIRS) throw tooFine(path);
  }
  return found;
}

interface Side {
  readonly strand: number;
  /** Number of the side on its strand. */
  readonly index: number;
  readonly from: Point2;
  readonly to: Point2;
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** Sides within the span by their left ends; a hair larger than they are, so that those that meet in a vertex overlap. */
function sidesOf(strands: readonly Strand[], low: number, high: number): Side[] {
  const hair = SAME_PLACE / 10;
  return strands
    .flatMap(({ walk: { points } }, strand) =>
      points.slice(1).map((to, index): Side => {
        const from = points[index];
        return {
          strand,
          index,
          from,
          to,
          left: Math.min(from[0], to[0]) - hair,
          right: Math.max(from[0], to[0]) + hair,
          low: Math.min(from[1], to[1]) - hair,
          high: Math.max(from[1], to[1]) + hair,
        };
      }),
    )
    .filter((side) => side.right >= low && side.left <= high)
    .sort((a, b) => a.left - b.left);
}

function crossingOf(strands: readonly Strand[], a: Side, b: Side): Crossing | undefined {
  const [rx, ry, qx, qy] = [a.to[0] - a.from[0], a.to[1] - a.from[1], b.to[0] - b.from[0], b.to[1] - b.from[1]];
  const cross = rx * qy - ry * qx;
  if (cross === 0) return undefined;
  const [dx, dy] = [b.from[0] - a.from[0], b.from[1] - a.from[1]];
  const [t, s] = [(dx * qy - dy * qx) / cross, (dx * ry - dy * rx) / cross];
  const [slackA, slackB] = [SAME_PLACE / 10 / Math.hypot(rx, ry), SAME_PLACE / 10 / Math.hypot(qx, qy)];
  if (t < -slackA || t > 1 + slackA || s < -slackB || s > 1 + slackB) return undefined;
  const at: Point2 = [a.from[0] + t * rx, a.from[1] + t * ry];
  const stationOf = ({ strand, index }: Side, share: number, length: number) =>
    strands[strand].walk.stations[index] + share * length;
  const own = { strand: a.strand, s: stationOf(a, t, Math.hypot(rx, ry)) };
  const other = { strand: b.strand, s: stationOf(b, s, Math.hypot(qx, qy)) };
  if (own.strand === other.strand && isNear(strands[own.strand], own.s, other.s)) return undefined;
  const [chord, far] = [chordAt(strands[own.strand], own.s), chordAt(strands[other.strand], other.s)];
  if (chord === undefined || far === undefined) return undefined;
  const sideOf = ([x, y]: Point2) =>
    (chord[1][0] - chord[0][0]) * (y - at[1]) - (chord[1][1] - chord[0][1]) * (x - at[0]);
  if (sideOf(far[0]) * sideOf(far[1]) >= 0) return undefined;
  return {
    at,
    passes: [
      { ...own, angle: angleOf(chord) },
      { ...other, angle: angleOf(far) },
    ],
  };
}

/** Whether two places of one strand are the same. */
function isNear({ walk, closed }: Strand, a: number, b: number): boolean {
  const apart = Math.abs(a - b);
  return apart < FEEL || (closed && walk.length - apart < FEEL);
}

/** The points of a strand before and behind a place; undefined where it ends between them. */
function chordAt({ walk, closed }: Strand, s: number): readonly [Point2, Point2] | undefined {
  if (!closed && (s < FEEL || s > walk.length - FEEL)) return undefined;
  return [walk.pointAt(s - FEEL), walk.pointAt(s + FEEL)];
}

function angleOf([[ax, ay], [bx, by]]: readonly [Point2, Point2]): number {
  const angle = Math.atan2(by - ay, bx - ax);
  return angle < 0 ? angle + Math.PI : angle;
}

/** Whether two findings are one crossing, found at the end of one side and the start of the next. */
function isSame(a: Crossing, b: Crossing): boolean {
  if (Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]) > SAME_PLACE) return false;
  const near = (p: Pass, q: Pass) => p.strand === q.strand && Math.abs(p.s - q.s) < FEEL;
  const [[p, q], [r, t]] = [a.passes, b.passes];
  return (near(p, r) && near(q, t)) || (near(p, t) && near(q, r));
}

function tooFine(path: string): AnnuletError {
  return new AnnuletError({
    code: "weave-too-fine",
    message: "the woven lines have more points or crossings than can be worked",
    path,
    allowed: `at most ${MOST_CROSSINGS} crossings in a few tiles`,
    hint: "draw the lines with fewer points, or fewer of them",
  });
}
