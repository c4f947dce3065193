/**
 * The bead runs of a ring, placed: those of the pattern and those of the document, shared beads merged.
 */

import type { Band } from "../band/band.js";
import type { Profile } from "../band/profile/profile.js";
import type { BandSurface, SurfaceLine } from "../band/surface/surface.js";
import { AnnuletError, type Warn } from "../base/errors.js";
import type { Point2 } from "../base/math/point.js";
import { FORGET, type Remember } from "../base/memory.js";
import { degrees, showLength, TOP, TURN } from "../base/units.js";
import type { BeadRunSpec } from "../design/pattern/bead-run.js";
import type { RunLine } from "../flat/runs.js";
import { startOnMiddle } from "../flat/start-on-middle.js";
import { unrollLine } from "../flat/unroll.js";
import type { Bead } from "./bead.js";
import { type BeadLines, type BeadSize, beadSize, followsTile } from "./bead-lines.js";
import {
  type BeadRunReport,
  type PlacedLine,
  reportRun,
  warnCrowded,
  warnPinched,
  warnSpacing,
} from "./bead-report.js";
import { placeOnSeat, placeRound, repeatBeads, requireAtMost } from "./bead-run.js";
import { mergeRuns } from "./bead-set.js";
import type { BeadRound, RoundPlace } from "./bead-track.js";
import { coverArc } from "./cover-arc.js";
import { inWall } from "./in-wall.js";
import { findJunctions } from "./junctions.js";

/** The runs with all their beads. */
export interface PlacedRuns {
  readonly runs: readonly Run[];
  /** What each run came to, in the same order. */
  readonly reports: readonly BeadRunReport[];
  /** All beads of the ring; where two runs share one it is here once. */
  readonly beads: readonly Bead[];
}

/** One run: its beads before those shared with other runs are merged. */
export interface Run extends Pick<BeadRunReport, "run" | "path" | "onRail" | "span"> {
  readonly beads: readonly Bead[];
  readonly bead: BeadSize;
}

export interface PlaceRunsOptions {
  readonly profile: Pick<Band, "rails" | "ledges" | "sectionAt" | "looks">;
  readonly wrap: BandSurface;
  readonly pattern: {
    readonly beadLines: readonly BeadLines[];
    /** Equal units that make the whole round. */
    readonly repeats: number;
  };
  /** mm from the pattern's ends to what runs on the seat keep clear of that stop with it; undefined where nothing is there. */
  readonly coverStop?: number | undefined;
  /** The document's own runs; those along paths are in the pattern. */
  readonly beadRuns: readonly BeadRunSpec[];
  /** Largest number of beads that is placed. */
  readonly maxBeads: number;
  readonly warn: Warn;
  /** Takes over lines that were placed before. Default: places all. */
  readonly remember?: Remember;
}

/** Most beads that are placed where nothing else is said: over ten times what the richest demo band carries. */
export const MAX_BEADS = 20_000;

/**
 * Places every bead run; warns of beads that overlap, gap or crowd.
 *
 * @throws AnnuletError `too-many-beads`, `no-rails`, `beads-off-seat`, `bead-sizes`, `bead-count`,
 *   `bead-line-too-short`
 */
export function placeRuns(options: PlaceRunsOptions): PlacedRuns {
  const { wrap, maxBeads, warn } = options;
  const plans = alikeWhereShared([...patternPlans(options), ...documentPlans(options)], options);
  const junctions = junctionsOf(plans, options);
  const placed = plans.map((plan) => plan.lines.map((line) => placeLine(line, plan, junctions.get(line), options)));
  const runs = plans.map(({ run, path, onRail, bead, span }, i): Run => {
    const count = placed[i].reduce((sum, line) => sum + line.copies * line.placed.beads.length, 0);
    requireAtMost(count, { most: maxBeads, path });
    const beads = placed[i].flatMap((line) => repeatBeads(line.placed.beads, line.copies));
    return { run, path, onRail, span, bead, beads };
  });
  const total = runs.reduce((sum, run) => sum + run.beads.length, 0);
  requireAtMost(total, { most: maxBeads, path: "beads" });
  const set = mergeRuns(runs.map((run) => run.beads));
  const reports = runs.map((run, i) => reportRun({ ...run, ...sizesOf(run.bead) }, placed[i], set.merged[i]));
  reports.forEach((report, i) => {
    warnSpacing(report, warn);
    warnPinched(
      report,
      placed[i].flatMap((line) => line.placed.pinched),
      wrap,
      warn,
    );
  });
  warnCrowded(set.crowded, wrap, warn);
  return { runs, reports, beads: set.beads };
}

function sizesOf({
  diameter,
  to,
  alternate,
}: BeadSize): Pick<BeadRunReport, "diameter" | "diameterMin" | "diameterMax"> {
  const other = to ?? alternate ?? diameter;
  return { diameter, diameterMin: Math.min(diameter, other), diameterMax: Math.max(diameter, other) };
}

/** A run before its beads are placed. */
interface Plan extends Pick<Run, "run" | "path" | "onRail" | "bead" | "span"> {
  /** mm above the seat of the surface that carries the beads. */
  readonly height: number;
  readonly lines: readonly PlannedLine[];
}

/** A line of a run: on the seat in every tile, or once round the finger, with its stretch in one tile where others may meet it. */
interface PlannedLine {
  readonly round?: BeadRound;
  readonly line?: RunLine;
  readonly copies: number;
}

function patternPlans({ pattern, wrap }: PlaceRunsOptions): Plan[] {
  return pattern.beadLines.map(({ lines, copies, ...rest }) => ({
    ...rest,
    onRail: false,
    lines: lines.flatMap((line): PlannedLine[] => {
      if (wrap.revolved) return [{ line, copies }];
      // No two tiles are alike in space.
      return unrollLine(startOnMiddle(line), copies, wrap.round / copies).map((one) => ({ line: one, copies: 1 }));
    }),
  }));
}

/** How often the lines of the whole pattern come again alike in space. */
function copiesOf({ wrap, pattern }: PlaceRunsOptions): number {
  return wrap.revolved ? pattern.repeats : 1;
}

function documentPlans(options: PlaceRunsOptions): Plan[] {
  const { beadRuns, profile, wrap } = options;
  const { revolved } = wrap;
  const copies = copiesOf(options);
  // From opposite the top on, so that a row lies alike on both sides of what is covered.
  const startAngle = TOP - TURN / 2;
  return beadRuns.flatMap((spec, i): Plan[] => {
    const { along, height } = spec;
    if (followsTile(along)) return [];
    const path = `beads[${i}]`;
    const bead = beadSize(spec, path);
    const round = (at: BeadRound["at"]): BeadRound => {
      const stop = along === "rail" || along === "step" ? undefined : options.coverStop;
      const ends = { startAngle: wrap.startAngle, diameter: sizesOf(bead).diameterMax, stop, path };
      const arc = spec.over === "cover" ? coverArc(at, ends) : undefined;
      return { at, revolved, startAngle, units: copies, arc };
    };
    const onSeat = (vAt: VAt): PlannedLine => {
      const at = (angle: number): RoundPlace => {
        const line = wrap.lineAt(angle);
        const v = vAt(line);
        const [w, radius] = line.point(v, height);
        return { w, radius, outward: line.normal(v) };
      };
      const line = bead.shares ? { line: flatLine(vAt, wrap, copies) } : {};
      return { round: round(at), ...line, copies };
    };
    if (along === "rail") {
      requireRails(profile, path);
      const lines = [0, 1].map((side): PlannedLine => {
        const at = (angle: number): RoundPlace => {
          const { faces, top } = requireRails(profile.sectionAt(angle), path);
          const [low, high] = faces[side];
          return { w: (low + high) / 2, radius: top, outward: [0, 1] };
        };
        return { round: round(at), copies: 1 };
      });
      return [{ run: "rail", path, onRail: true, span: spanOf(lines), bead, height, lines }];
    }
    if (along === "step") {
      requireLedges(profile, path);
      const lines = ([0, 1] as const).map((side): PlannedLine => {
        const at = (angle: number): RoundPlace => {
          return { ...requireLedges(profile.sectionAt(angle), path)[side], outward: [0, 1] };
        };
        return { round: round(at), copies: 1 };
      });
      return [{ run: "step", path, onRail: true, span: spanOf(lines), bead, height, lines }];
    }
    if (along === "seat-edge") {
      const inset = spec.inset ?? EDGE_INSET * bead.diameter;
      const least = Math.min(...profile.looks.map((angle) => wrap.lineAt(angle).length));
      if (least / 2 < inset) throw pastMiddle(inset, least, path);
      const lines = (["start", "end"] as const).map((side) => onSeat((line) => line.inFrom(side, inset)));
      return [{ run: "seat-edge", path, onRail: false, span: spanOf(lines), bead, height, lines }];
    }
    const half = Math.min(...profile.looks.map((angle) => wrap.lineAt(angle).reach));
    if (Math.abs(along.v) > half) throw offSeat(along.v, half, path);
    warnInWall(along.v, { spec, path, bead }, options);
    const lines = [onSeat(() => along.v)];
    return [{ run: `v ${along.v}`, path, onRail: false, span: spanOf(lines), bead, height, lines }];
  });
}

/** θ of the first and last bead of lines that all stop, degrees. */
function spanOf(lines: readonly PlannedLine[]): Plan["span"] {
  const [arc] = lines.map(({ round }) => round?.arc);
  return arc && [degrees(arc[0]), degrees(arc[1])];
}

/** Warns of beads of which the wall takes more than this share of the radius; those along a seat's edge lose a tenth. Chosen. */
const IN_WALL = 0.25;

/** Warns `beads-in-wall` of a circle at v whose beads stand in a wall at the top of the ring. */
function warnInWall(
  v: number,
  { spec, path, bead }: { readonly spec: BeadRunSpec; readonly path: string; readonly bead: BeadSize },
  { profile, wrap, warn }: PlaceRunsOptions,
): void {
  const radius = sizesOf(bead).diameterMax / 2;
  const line = wrap.lineAt(TOP);
  const rise = spec.height + 2 * radius * (0.5 - bead.embed);
  const place = { foot: line.point(v, 0), outward: line.normal(v), rise, radius };
  const share = inWall(profile.sectionAt(TOP).polyline, place);
  if (share <= IN_WALL) return;
  const reach = showLength(line.length / 2);
  warn({
    code: "beads-in-wall",
    message: `the wall beside the run stands at least ${showLength(share * radius)} into its beads of ${showLength(2 * radius)}`,
    path: `${path}.along.v`,
    value: v,
    hint: `v is measured along the section, whose seat ends at ±${reach}; move the run away from the wall, or say "seat-edge"`,
  });
}

/** Diameters from the seat's edge to a seat-edge bead's centre: it bites into the rail, not merely touches it. */
const EDGE_INSET = 0.45;

/** v of a run on the surface's line. */
type VAt = (line: SurfaceLine) => number;

/** Places at which a run once round the finger is laid flat where it does not lie straight. */
const FLAT_PLACES = 360;

/** The span of a run round the finger that lies in the first of so many tiles, laid flat. */
function flatLine(vAt: VAt, wrap: BandSurface, copies: number): RunLine {
  const end = wrap.round / copies;
  const steps = wrap.revolved ? 1 : FLAT_PLACES;
  const points = Array.from({ length: steps + 1 }, (_, i): Point2 => {
    const u = (end * i) / steps;
    return [u, vAt(wrap.lineAt(wrap.angleAt(u)))];
  });
  return { points, kind: "strand", even: false };
}

/** Where runs share beads, lines that come again more often than the whole pattern are taken as often as it does. */
function alikeWhereShared(plans: readonly Plan[], options: PlaceRunsOptions): readonly Plan[] {
  if (!plans.some(({ bead }) => bead.shares)) return plans;
  const { round } = options.wrap;
  const repeats = copiesOf(options);
  return plans.map((plan) => ({
    ...plan,
    lines: plan.lines.flatMap((planned): PlannedLine[] => {
      const { line, round: whole, copies } = planned;
      if (line === undefined || whole !== undefined || copies === repeats) return [planned];
      const times = copies / repeats;
      return unrollLine(line, times, round / copies).map((longer) => ({ line: longer, copies: repeats }));
    }),
  }));
}

/** The junctions of every line that has some. */
function junctionsOf(plans: readonly Plan[], options: PlaceRunsOptions): ReadonlyMap<PlannedLine, readonly number[]> {
  if (!plans.some(({ bead }) => bead.shares)) return new Map();
  const meeting = plans.flatMap(({ bead, height, lines }) => {
    const { diameterMin: diameter } = sizesOf(bead);
    const level = height + diameter * (0.5 - bead.embed);
    return lines.flatMap((planned) => {
      const { line } = planned;
      return line === undefined ? [] : [{ planned, line, diameter, level, shares: bead.shares }];
    });
  });
  const found = findJunctions(meeting, options.wrap.round / copiesOf(options));
  return new Map(meeting.flatMap(({ planned }, i) => (found[i].length > 0 ? [[planned, found[i]] as const] : [])));
}

function placeLine(
  { round, line, copies }: PlannedLine,
  { bead, height, path }: Plan,
  junctions: readonly number[] | undefined,
  { wrap, maxBeads, remember = FORGET }: PlaceRunsOptions,
): PlacedLine {
  const how = { ...bead, height, most: maxBeads, path, junctions };
  if (round !== undefined && (line === undefined || junctions === undefined)) {
    return { placed: placeRound(round, how), copies: 1 };
  }
  const onSeat = line as RunLine;
  return { placed: remember(["beads on the seat", how], [onSeat, wrap], () => placeOnSeat(onSeat, wrap, how)), copies };
}

function requireRails(profile: Pick<Profile, "rails">, path: string): NonNullable<Profile["rails"]> {
  if (profile.rails !== undefined) return profile.rails;
  throw new AnnuletError({
    code: "no-rails",
    message: "the band has no rails for beads to stand on",
    path: `${path}.along`,
    value: "rail",
    allowed: '"seat-edge", {"v": …} or {"path": …}; "rail" on a channel band',
    hint: "choose a channel outside, or another line for the run",
  });
}

function requireLedges(profile: Pick<Profile, "ledges">, path: string): NonNullable<Profile["ledges"]> {
  if (profile.ledges !== undefined) return profile.ledges;
  throw new AnnuletError({
    code: "no-step",
    message: "the band has no step along its edges for beads to stand in",
    path: `${path}.along`,
    value: "step",
    allowed: '"rail", "seat-edge", {"v": …} or {"path": …}; "step" where profile.step is given',
    hint: 'add "step": {} to the profile, or choose another line for the run',
  });
}

function pastMiddle(inset: number, seatLength: number, path: string): AnnuletError {
  return new AnnuletError({
    code: "beads-off-seat",
    message: "the two runs along the seat's edges lie beyond its middle",
    path: `${path}.inset`,
    value: inset,
    allowed: `0 to ${showLength(seatLength / 2)}, half the seat`,
    hint: 'place them nearer to the edges, or one run in the middle with "along": {"v": 0}',
  });
}

function offSeat(v: number, half: number, path: string): AnnuletError {
  return new AnnuletError({
    code: "beads-off-seat",
    message: `the bead run lies ${showLength(Math.abs(v) - half)} beyond the edge of the seat`,
    path: `${path}.along.v`,
    value: v,
    allowed: `within ±${showLength(half)}`,
    hint: "move the run towards the middle of the band",
  });
}
