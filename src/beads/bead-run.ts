/**
 * Bead runs: centres at even arc length along the wrapped line, measured in space.
 *
 * A loop or strand of length L takes n = max(1, round(L / (pitch · d))) beads at L / n; an open line hits both its ends.
 * A line that its symmetry brings onto itself takes the nearest even number, so that the beads are as symmetric. Stops,
 * at corners and junctions, part a line into legs that are spaced one by one.
 */

import type { BandSurface } from "../band/surface/surface.js";
import { AnnuletError } from "../base/errors.js";
import type { Point3 } from "../base/math/point.js";
import { TURN } from "../base/units.js";
import { findCorners } from "../flat/corners.js";
import type { RunLine } from "../flat/runs.js";
import { sideAt } from "../flat/walk-line.js";
import type { Bead } from "./bead.js";
import { clearOf, fitLeg, type LegEnd, type LegFit, nearestCount } from "./bead-leg.js";
import { type BeadSizes, type BeadSizesOptions, beadSizes } from "./bead-sizes.js";
import { type BeadRound, type BeadTrack, roundTrack, seatTrack } from "./bead-track.js";

export interface BeadRunOptions extends BeadSizesOptions {
  /** Wanted spacing over diameter. */
  readonly pitch: number;
  /** Exact number of beads on a line instead of a pitch. */
  readonly count?: number;
  /** Share of the diameter below the surface that carries the bead. */
  readonly embed: number;
  /** mm above the seat of that surface. */
  readonly height: number;
  /** What the beads make of corners. Default pass: nothing. */
  readonly corners?: "pass" | "on" | "split";
  /** A corner is where the line turns by more than this, radians. Default 30°. */
  readonly cornerAngle?: number;
  /** Places of the flat line that must carry a bead, as index of a side and share of it. Default none. */
  readonly junctions?: readonly number[];
  /** Most beads that may be placed. */
  readonly most: number;
  /** Where the run stands in the document, for errors. */
  readonly path: string;
}

/** Beads of one line, before it is repeated. */
export interface PlacedRun {
  readonly beads: readonly Bead[];
  /** Mean arc length between neighbours, mm; undefined for a single bead on an open line. */
  readonly spacing: number | undefined;
  /** What each leg of the line came to. */
  readonly legs: readonly LegSpacing[];
  /** The same with one step fewer beads in each leg and with one more; undefined where there can be none. */
  readonly fewer: LineChoice | undefined;
  readonly more: LineChoice | undefined;
  /** Beads at a stop whose two neighbours crowd each other over a sharp corner. */
  readonly pinched: readonly Bead[];
}

export type LegSpacing = Pick<LegFit, "spacing" | "ratio">;

/** What a line would come to with another number of beads. */
export interface LineChoice {
  readonly count: number;
  readonly legs: readonly LegSpacing[];
}

/** Corners are felt over this share of a bead's diameter. */
const CORNER_REACH = 0.125;

/** A corner nearer to a junction or an open end than this share of the diameter is left to it. */
const BESIDE = 0.5;

/** Default of `cornerAngle`, radians: 30°. */
const CORNER_ANGLE = TURN / 12;

/** Beads whose neighbours over a corner overlap by more than this share of their mean diameter are pinched. */
const PINCH = 0.15;

/**
 * Places beads along a flat line on the seat.
 *
 * @throws AnnuletError `bead-line-too-short`, `too-many-beads`, `beads-uneven`
 */
export function placeOnSeat(line: RunLine, wrap: BandSurface, options: BeadRunOptions): PlacedRun {
  return placeOnTrack(seatTrack(line, wrap, options.height), line, options);
}

/** Places beads on a line round the finger axis. */
export function placeRound(round: BeadRound, options: BeadRunOptions): PlacedRun {
  const line: RunLine = { points: [], kind: round.arc === undefined ? "loop" : "open", even: false };
  // Such a line has no corners.
  if (round.arc !== undefined || !(round.revolved && beadSizes(options, line).constant)) {
    return placeOnTrack(roundTrack(round), line, { ...options, corners: "pass" });
  }
  const { startAngle } = round;
  const { w, radius, outward } = round.at(startAngle);
  const [nw, nr] = outward;
  const rise = riseOf(options.diameter, options);
  const r = radius + rise * nr;
  const length = TURN * r;
  const count = options.count ?? countRound(length, round.units ?? 1, options);
  requireAtMost(count, options);
  const beads = Array.from({ length: count }, (_, i): Bead => {
    const [cos, sin] = [Math.cos(startAngle + (TURN * i) / count), Math.sin(startAngle + (TURN * i) / count)];
    return {
      centre: [r * cos, r * sin, w + rise * nw],
      radius: options.diameter / 2,
      outward: [nr * cos, nr * sin, nw],
    };
  });
  const choice = (n: number): LineChoice => ({
    count: n,
    legs: [{ spacing: length / n, ratio: length / n / options.diameter }],
  });
  return {
    beads,
    spacing: length / count,
    legs: choice(count).legs,
    pinched: [],
    fewer: count > 1 ? choice(count - 1) : undefined,
    more: choice(count + 1),
  };
}

/**
 * By this share a spacing may differ from the wanted one so that every unit of the pattern has as many beads: half of what
 * the default pitch leaves between two (chosen).
 */
const UNIT_CHANGE = 0.025;

/** Beads on a circle: as many in each unit where that brings them neither too near nor too far apart. */
function countRound(length: number, units: number, { pitch, diameter }: BeadRunOptions): number {
  const wanted = length / (pitch * diameter);
  const nearest = Math.max(1, Math.round(wanted));
  const even = units * Math.round(wanted / units);
  const touches = length < even * diameter && length >= nearest * diameter;
  return even > 0 && !touches && Math.abs(wanted / even - 1) <= UNIT_CHANGE ? even : nearest;
}

/** @throws AnnuletError `too-many-beads` before any of them is made */
export function requireAtMost(count: number, { most, path }: Pick<BeadRunOptions, "most" | "path">): void {
  if (count <= most) return;
  throw new AnnuletError({
    code: "too-many-beads",
    message: `the design asks for ${count} beads`,
    path,
    value: count,
    allowed: `at most ${most}`,
    hint: "make the beads larger or fewer, or raise the limit (maxBeads; --max-beads on the command line)",
  });
}

/** Ends of lines nearer than this are one point when a pattern's lines are joined, mm: what is shorter is no line. */
const LEAST_LENGTH = 1e-3;

function requireLength(length: number, { path }: Pick<BeadRunOptions, "path">): void {
  if (length >= LEAST_LENGTH) return;
  throw new AnnuletError({
    code: "bead-line-too-short",
    message: `a line of the bead run is only ${length.toPrecision(2)} mm long`,
    path,
    value: length,
    allowed: `lines of at least ${LEAST_LENGTH} mm`,
    hint: "take the dot away, or draw a line that a bead can stand on",
  });
}

/** The run's beads in every tile. */
export function repeatBeads(beads: readonly Bead[], repeats: number): Bead[] {
  const all: Bead[] = [];
  for (let tile = 0; tile < repeats; tile++) {
    const cos = Math.cos((TURN * tile) / repeats);
    const sin = Math.sin((TURN * tile) / repeats);
    const turn = (point: Point3): Point3 => [
      point[0] * cos - point[1] * sin,
      point[0] * sin + point[1] * cos,
      point[2],
    ];
    for (const { centre, outward, radius } of beads) {
      all.push({ centre: turn(centre), radius, outward: turn(outward) });
    }
  }
  return all;
}

/** mm from the carrying surface out to a bead's centre. */
function riseOf(diameter: number, { embed }: Pick<BeadRunOptions, "embed">): number {
  return diameter * (0.5 - embed);
}

/** Places beads along any track. */
function placeOnTrack(track: BeadTrack, line: RunLine, options: BeadRunOptions): PlacedRun {
  const sizes = beadSizes(options, line);
  const single = options.count === 1 && line.kind === "open";
  const lengths = measure(track, sizes, options);
  const total = lengths[track.last];
  requireLength(total, options);
  const stops = findStops(track, line, lengths, sizes, options);
  const legs = partLine(line, total, stops, single);
  const counts = legs.map((leg) => countOn(leg, total, sizes, line, options));
  requireAtMost(
    counts.reduce((sum, { count }) => sum + count - 1, 0),
    options,
  );
  const fitted = legs.map((leg, i) => fitOn(leg, counts[i].count, total, sizes));
  const nodes: number[] = [];
  const radii: number[] = [];
  const atStops: number[] = [];
  fitted.forEach(({ places, diameters }, i) => {
    const { from, ends, sharesEnd } = legs[i];
    if (stops.length > 0 && ends[0] === "bead") atStops.push(nodes.length);
    for (let k = 0; k < places.length - (sharesEnd ? 1 : 0); k++) {
      nodes.push(nodeAt(lengths, from + places[k], line.kind !== "open"));
      radii.push(diameters[k] / 2);
    }
  });
  const bead = (i: number): Bead => {
    const radius = radii[i % radii.length];
    const ahead = i < nodes.length ? 0 : track.last;
    return { ...track.placeAt(nodes[i % nodes.length] + ahead, riseOf(2 * radius, options)), radius };
  };
  return {
    beads: nodes.map((_, i) => bead(i)),
    spacing: meanSpacing(fitted, single),
    legs: single ? [] : fitted.map(({ spacing, ratio }) => ({ spacing, ratio })),
    fewer: single ? undefined : choose(-1, legs, counts, total, sizes),
    more: single ? undefined : choose(1, legs, counts, total, sizes),
    pinched: findPinched(atStops, nodes.length, line.kind !== "open", bead),
  };
}

/** Beads at stops whose neighbours crowd each other. `bead` gives beads on over the end of a cyclic line. */
function findPinched(stops: readonly number[], count: number, cyclic: boolean, bead: (i: number) => Bead): Bead[] {
  if (count < 3) return [];
  const inner = stops.map((i) => (i === 0 && cyclic ? count : i)).filter((i) => i > 0 && (cyclic || i + 1 < count));
  return inner
    .filter((i) => {
      const [before, after] = [bead(i - 1), bead(i + 1)];
      const apart = Math.hypot(...before.centre.map((value, k) => value - after.centre[k]));
      return apart < (1 - PINCH) * (before.radius + after.radius);
    })
    .map((i) => bead(i));
}

/** The node number at an arc length, on past the end of a line that closes. */
function nodeAt(lengths: readonly number[], s: number, cyclic: boolean): number {
  const last = lengths.length - 1;
  const total = lengths[last];
  if (s <= total || !cyclic) return sideAt(lengths, s);
  return sideAt(lengths, s - total) + last;
}

/** A leg of a line between stops. */
interface Leg {
  /** Arc lengths, mm. */
  readonly from: number;
  readonly length: number;
  readonly ends: readonly [LegEnd, LegEnd];
  /** Whether the bead at its end is the first of the next leg. */
  readonly sharesEnd: boolean;
}

/** A place that parts a line. */
interface Stop {
  /** Arc length, mm. */
  readonly s: number;
  readonly end: LegEnd;
}

/** The stops of a line by rising arc length: junctions, and corners apart from those and from open ends. */
function findStops(
  track: BeadTrack,
  line: RunLine,
  lengths: readonly number[],
  sizes: BeadSizes,
  { corners = "pass", cornerAngle = CORNER_ANGLE, junctions = [] }: BeadRunOptions,
): Stop[] {
  const total = lengths[lengths.length - 1];
  const arcOf = (at: number) => {
    const node = track.nodeOf(at);
    const i = Math.min(Math.floor(node), track.last - 1);
    return lengths[i] + (node - i) * (lengths[i + 1] - lengths[i]);
  };
  const room = BESIDE * sizes.least;
  const open = line.kind === "open";
  const inside = ({ s }: Stop) => !open || (s > room && s < total - room);
  const fixed = junctions.map((at): Stop => ({ s: arcOf(at), end: "bead" })).filter(inside);
  if (corners === "pass") return fixed;
  const apart = (a: number, b: number) => (open ? Math.abs(a - b) : Math.min(Math.abs(a - b), total - Math.abs(a - b)));
  const turned = findCorners(line, { angle: cornerAngle, reach: CORNER_REACH * sizes.least })
    .map(({ at, turn }): Stop => ({ s: arcOf(at), end: corners === "on" ? "bead" : clearOf(turn) }))
    .filter((stop) => inside(stop) && fixed.every(({ s }) => apart(s, stop.s) > room));
  return [...fixed, ...turned].sort((a, b) => a.s - b.s);
}

function partLine({ kind }: RunLine, total: number, stops: readonly Stop[], single: boolean): Leg[] {
  if (single) return [{ from: 0, length: total, ends: [MIDDLE, MIDDLE], sharesEnd: false }];
  const first: Stop = { s: 0, end: "bead" };
  if (kind === "open") {
    const all = [first, ...stops, { s: total, end: "bead" } as Stop];
    return all.slice(1).map((stop, i) => between(all[i], stop, i + 2 < all.length));
  }
  const round = stops.length > 0 ? stops : [first];
  return round.map((stop, i) =>
    between(stop, i + 1 < round.length ? round[i + 1] : { ...round[0], s: round[0].s + total }, true),
  );
}

/** Half a leg to either side: where the only bead of an open line stands. */
const MIDDLE = { clear: 0.5 } as const;

function between(a: Stop, b: Stop, goesOn: boolean): Leg {
  return { from: a.s, length: b.s - a.s, ends: [a.end, b.end], sharesEnd: goesOn && b.end === "bead" };
}

/** Beads of a leg, those at both ends counted, and the step in which that number may change. */
interface LegCount {
  readonly count: number;
  readonly step: number;
  readonly least: number;
}

function countOn(
  { from, length, ends, sharesEnd }: Leg,
  total: number,
  sizes: BeadSizes,
  line: RunLine,
  { count, pitch, diameter }: BeadRunOptions,
): LegCount {
  const whole = length === total;
  const step = (whole && line.even ? 2 : 1) * (sizes.alternating ? 2 : 1);
  const least = ends[0] === "bead" && ends[1] === "bead" ? 1 : 0;
  if (count !== undefined) return { count: sharesEnd ? count + 1 : count, step: 1, least };
  const wanted = sizes.constant
    ? length / (pitch * diameter)
    : (length * sizes.density(from / total, (from + length) / total)) / pitch;
  return { count: nearestCount(wanted, ends, { step, least }), step, least };
}

function fitOn({ from, length, ends }: Leg, count: number, total: number, sizes: BeadSizes): LegFit {
  const diameterAt = (s: number, index: number) => sizes.at((from + s) / total, index);
  return fitLeg(count, { length, ends, diameterAt, constant: sizes.constant });
}

/** What the line comes to with every leg a step fewer or more; undefined where one has no fewer. */
function choose(
  steps: -1 | 1,
  legs: readonly Leg[],
  counts: readonly LegCount[],
  total: number,
  sizes: BeadSizes,
): LineChoice | undefined {
  const changed = counts.map(({ count, step }) => count + steps * step);
  if (changed.some((count, i) => count < 1 + counts[i].step * counts[i].least)) return undefined;
  const fitted = legs.map((leg, i) => fitOn(leg, changed[i], total, sizes));
  return {
    count: changed.reduce((sum, count, i) => sum + count - (legs[i].sharesEnd ? 1 : 0), 0),
    legs: fitted.map(({ spacing, ratio }) => ({ spacing, ratio })),
  };
}

/** Arc length at each node of the way that the beads' centres take, which rises and falls with their size. */
function measure(track: BeadTrack, sizes: BeadSizes, options: BeadRunOptions): number[] {
  const sum = (riseAt: (node: number) => number) => {
    let before = track.centreAt(0, riseAt(0));
    let s = 0;
    return Array.from({ length: track.last + 1 }, (_, node) => {
      const point = track.centreAt(node, riseAt(node));
      s += Math.hypot(point[0] - before[0], point[1] - before[1], point[2] - before[2]);
      before = point;
      return s;
    });
  };
  const middle = riseOf((sizes.least + sizes.most) / 2, options);
  let lengths = sum(() => middle);
  if (sizes.constant || sizes.alternating || middle === 0) return lengths;
  for (let round = 0; round < RISE_ROUNDS; round++) {
    const known = lengths;
    lengths = sum((node) => riseOf(sizes.at(known[node] / known[track.last], 0), options));
  }
  return lengths;
}

/** Rounds in which lengths and rises settle: each leaves under a tenth of the error, as a rise is far below a radius. */
const RISE_ROUNDS = 12;

function meanSpacing(fitted: readonly LegFit[], single: boolean): number | undefined {
  return single ? undefined : fitted.reduce((sum, { spacing }) => sum + spacing, 0) / fitted.length;
}
