/**
 * Strands in pieces: each from where it passes under to where it next does, over whatever lies between.
 */
import { AnnuletError } from "../../base/errors.js";
import type { Point2 } from "../../base/math/point.js";
import type { WeaveSpec } from "../../design/pattern/weave.js";
import type { Walk } from "../../flat/walk-line.js";
import { type Bridge, bridgeAt, type Meeting } from "./bridge.js";
import type { Crossing, Strand } from "./crossings.js";
import { type Order, passesAlong } from "./order.js";

/** Where a piece ends beneath another strand. */
export interface UnderEnd {
  readonly crossing: number;
  /** The strand that passes over, and where, mm along it. */
  readonly strand: number;
  readonly s: number;
  /** Angle between the two, radians, above 0 to half a right turn. */
  readonly angle: number;
}

/** A piece of a strand. */
export interface Arc {
  readonly strand: number;
  /** From where to where along it, mm; on a closed strand the end may lie past its length. */
  readonly span: readonly [from: number, to: number];
  /** What it ends beneath; undefined where the strand ends, or closes without passing under anything. */
  readonly ends: readonly [start: UnderEnd | undefined, end: UnderEnd | undefined];
  readonly bridges: readonly Bridge[];
}

export interface ArcsOptions {
  /** Name and weave of each region, by its number. */
  readonly members: readonly { readonly name: string; readonly weave: WeaveSpec; readonly path: string }[];
  /** Whether a piece of a strand, from mm to mm along it, is wanted. */
  readonly wants: (strand: Strand, span: readonly [number, number]) => boolean;
}

/** Strands that cross at less than this run along each other, radians: 12°. Chosen: the overlap is then five widths long. */
const LEAST_ANGLE = 0.21;

/** A crossing on the strand, with the other strand there. */
interface Station extends Meeting {
  readonly other: UnderEnd;
}

/**
 * The pieces that are wanted.
 *
 * @throws AnnuletError `weave-too-flat`, `weave-curl`, `weave-too-tight`
 */
export function cutStrands(
  strands: readonly Strand[],
  crossings: readonly Crossing[],
  order: Order,
  options: ArcsOptions,
): Arc[] {
  return passesAlong(strands, crossings).flatMap((passes, strand): Arc[] => {
    const { walk, closed, width, member } = strands[strand];
    const meetings = passes.map(({ crossing, which, pass }): Station => {
      const other = crossings[crossing].passes[1 - which];
      const turn = Math.abs(pass.angle - other.angle);
      const angle = Math.min(turn, Math.PI - turn);
      const half = strands[other.strand].width / 2 / Math.sin(angle);
      return {
        s: pass.s,
        over: order[crossing] === which,
        half,
        other: { crossing, strand: other.strand, s: other.s, angle },
      };
    });
    const count = meetings.length;
    const unders = meetings.flatMap(({ over }, i) => (over ? [] : [i]));
    const spans = spansBetween(unders, count, closed);
    // Past the end of a closed strand its crossings come again.
    const at = (i: number | undefined): Station | undefined => {
      if (i === undefined || !closed) return meetings[i ?? -1];
      const rounds = Math.floor(i / count);
      const meeting = meetings[i - rounds * count];
      return { ...meeting, s: meeting.s + rounds * walk.length };
    };
    return spans.flatMap(([first, last]): Arc[] => {
      const span: [number, number] = [at(first)?.s ?? 0, at(last)?.s ?? walk.length];
      if (!options.wants(strands[strand], span)) return [];
      const { name, weave, path } = options.members[member];
      const from = first ?? -1;
      const inner = Array.from({ length: (last ?? count) - from - 1 }, (_, k) => from + 1 + k);
      const ends: Arc["ends"] = [at(first)?.other, at(last)?.other];
      const bridges = inner.map((i) => {
        const meeting = at(i) as Station;
        const { crossing } = meeting.other;
        if (ends.some((end) => end?.crossing === crossing)) throw curl(name, crossings[crossing].at, path);
        return bridgeAt(meeting, [at(i - 1), at(i + 1)], { weave, width, name, path });
      });
      const flat = [...ends, ...inner.map((i) => at(i)?.other)].find((other) => other && other.angle < LEAST_ANGLE);
      if (flat !== undefined) throw tooFlat(name, crossings[flat.crossing].at, path);
      return [{ strand, span, ends, bridges }];
    });
  });
}

/** From which crossing to which the pieces go, by their numbers along the strand; undefined is the strand's own end. */
function spansBetween(
  unders: readonly number[],
  count: number,
  closed: boolean,
): (readonly [number | undefined, number | undefined])[] {
  if (unders.length === 0) return [[undefined, undefined]];
  const inner = unders.slice(1).map((last, i): [number, number] => [unders[i], last]);
  const [first, last] = [unders[0], unders[unders.length - 1]];
  return closed ? [...inner, [last, first + count]] : [[undefined, first], ...inner, [last, undefined]];
}

/** The points of a line from one place to another, mm along it. */
export function pointsBetween(walk: Walk, closed: boolean, [from, to]: readonly [number, number]): Point2[] {
  const { stations, points, length } = walk;
  const between: { s: number; point: Point2 }[] = [];
  for (let round = Math.floor(from / length); closed && round * length < to; round++) {
    stations.forEach((station, i) => {
      if (i > 0) between.push({ s: station + round * length, point: points[i] });
    });
  }
  if (!closed) between.push(...stations.map((s, i) => ({ s, point: points[i] })));
  const inside = between.filter(({ s }) => s > from && s < to).map(({ point }) => point);
  return [walk.pointAt(from), ...inside, walk.pointAt(to)];
}

function tooFlat(name: string, [u, v]: Point2, path: string): AnnuletError {
  return new AnnuletError({
    code: "weave-too-flat",
    message: `${name} crosses another strand at too small an angle at u ${u.toFixed(3)}, v ${v.toFixed(3)}`,
    path,
    allowed: `${Math.ceil((LEAST_ANGLE * 180) / Math.PI)}° or more between the two`,
    hint: "draw the lines so that they cross more steeply",
  });
}

function curl(name: string, [u, v]: Point2, path: string): AnnuletError {
  return new AnnuletError({
    code: "weave-curl",
    message: `${name} crosses itself at u ${u.toFixed(3)}, v ${v.toFixed(3)} with nothing else crossed in between, and such a curl cannot be woven yet`,
    path,
    allowed: "loops that cross another strand between the two passes of their own crossing",
    hint: "let the loop cross its neighbour, or draw its two halves as regions of one set",
  });
}
