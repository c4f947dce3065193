/**
 * Bead runs: centres at even arc length along the wrapped line, measured in space.
 *
 * A loop or strand of length L takes n = max(1, round(L / (pitch · d))) beads at L / n; an open line hits both its ends.
 * A line that its symmetry brings onto itself takes the nearest even number, so that the beads are as symmetric.
 */
import { AnnuletError } from "../errors.js";
import type { Point2, Point3 } from "../math/point.js";
import type { RunLine } from "../pattern/runs.js";
import { TURN } from "../units.js";
import type { Wrap } from "../wrap/wrap.js";
import type { Bead } from "./bead.js";

export interface BeadRunOptions {
  /** Bead diameter, mm. */
  readonly diameter: number;
  /** Wanted spacing over diameter. */
  readonly pitch: number;
  /** Exact number of beads on a line instead of a pitch. */
  readonly count?: number;
  /** Share of the diameter below the surface that carries the bead. */
  readonly embed: number;
  /** mm above the seat of that surface. */
  readonly height: number;
  /** Most beads that may be placed. */
  readonly most: number;
  /** Where the run stands in the document, for errors. */
  readonly path: string;
}

/** Beads of one line, before it is repeated. */
export interface PlacedRun {
  readonly beads: readonly Bead[];
  /** Arc length between neighbours, mm; undefined for a single bead on an open line. */
  readonly spacing: number | undefined;
}

/** Longest stretch of a flat line that is taken as straight in space, mm: its chord is short by under 1e-5 of it. */
const MEASURE_STEP = 0.1;

/** Places beads along a flat line on the seat. */
export function placeOnSeat(line: RunLine, wrap: Wrap, options: BeadRunOptions): PlacedRun {
  const h = options.height + centreRise(options);
  const closed = line.kind === "loop" ? [...line.points, line.points[0]] : line.points;
  const flat = subdivide(closed);
  const lengths = measure(flat.map(([u, v]) => wrap.forward(u, v, h)));
  const total = lengths[lengths.length - 1];
  const open = line.kind === "open";
  const intervals = intervalCount(total, options, line);
  requireAtMost(intervals, options);
  const spacing = intervals === 0 ? undefined : total / intervals;
  const beads: Bead[] = [];
  for (let i = 0; i < (open ? intervals + 1 : intervals); i++) {
    const [u, v] = intervals === 0 ? at(flat, lengths, total / 2) : at(flat, lengths, (total * i) / intervals);
    beads.push({ centre: wrap.forward(u, v, h), radius: options.diameter / 2, outward: outwardAt(wrap, u, v) });
  }
  return { beads, spacing };
}

/** A circle about the finger axis that carries beads. */
export interface BeadCircle {
  /** mm along the axis. */
  readonly w: number;
  /** mm from the axis. */
  readonly radius: number;
  /** Outward unit normal of the carrying surface in (w, r). */
  readonly outward: Point2;
  /** Angle of the first bead, radians. */
  readonly startAngle: number;
}

/** Places beads round a circle about the finger axis. */
export function placeOnCircle(
  { w, radius, outward: [nw, nr], startAngle }: BeadCircle,
  options: BeadRunOptions,
): PlacedRun {
  const rise = centreRise(options);
  const r = radius + rise * nr;
  const length = TURN * r;
  const count = options.count ?? Math.max(1, Math.round(length / (options.pitch * options.diameter)));
  requireAtMost(count, options);
  const beads = Array.from({ length: count }, (_, i): Bead => {
    const [cos, sin] = [Math.cos(startAngle + (TURN * i) / count), Math.sin(startAngle + (TURN * i) / count)];
    return {
      centre: [r * cos, r * sin, w + rise * nw],
      radius: options.diameter / 2,
      outward: [nr * cos, nr * sin, nw],
    };
  });
  return { beads, spacing: length / count };
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

/** The run's beads in every tile. */
export function repeatBeads(beads: readonly Bead[], repeats: number): Bead[] {
  return Array.from({ length: repeats }, (_, tile) => {
    const [cos, sin] = [Math.cos((TURN * tile) / repeats), Math.sin((TURN * tile) / repeats)];
    const turn = ([x, y, z]: Point3): Point3 => [x * cos - y * sin, x * sin + y * cos, z];
    return beads.map((bead): Bead => ({ ...bead, centre: turn(bead.centre), outward: turn(bead.outward) }));
  }).flat();
}

/** mm from the carrying surface out to the bead's centre. */
function centreRise({ diameter, embed }: BeadRunOptions): number {
  return diameter * (0.5 - embed);
}

function intervalCount(length: number, { count, pitch, diameter }: BeadRunOptions, line: RunLine): number {
  if (count !== undefined) return line.kind === "open" ? count - 1 : count;
  const wanted = length / (pitch * diameter);
  return line.even ? 2 * Math.max(1, Math.round(wanted / 2)) : Math.max(1, Math.round(wanted));
}

function subdivide(points: readonly Point2[]): Point2[] {
  const fine: Point2[] = [points[0]];
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]];
    const count = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / MEASURE_STEP));
    for (let k = 1; k <= count; k++)
      fine.push([a[0] + ((b[0] - a[0]) * k) / count, a[1] + ((b[1] - a[1]) * k) / count]);
  }
  return fine;
}

/** Arc length at each point. */
function measure(points: readonly Point3[]): number[] {
  let sum = 0;
  return points.map((point, i) => {
    if (i > 0) sum += Math.hypot(...[0, 1, 2].map((k) => point[k] - points[i - 1][k]));
    return sum;
  });
}

/** The flat point at an arc length. */
function at(points: readonly Point2[], lengths: readonly number[], s: number): Point2 {
  let [low, high] = [0, lengths.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (lengths[middle] <= s) low = middle;
    else high = middle;
  }
  const t = lengths[high] === lengths[low] ? 0 : (s - lengths[low]) / (lengths[high] - lengths[low]);
  return [
    points[low][0] + t * (points[high][0] - points[low][0]),
    points[low][1] + t * (points[high][1] - points[low][1]),
  ];
}

function outwardAt(wrap: Wrap, u: number, v: number): Point3 {
  const [nw, nr] = wrap.normal(v);
  const angle = wrap.startAngle + u / wrap.referenceRadius;
  return [nr * Math.cos(angle), nr * Math.sin(angle), nw];
}
