/**
 * The bead runs of a ring, placed: those of the pattern and those of the document, shared beads merged.
 */
import { AnnuletError, type Warn } from "../errors.js";
import { type BeadLines, type BeadSize, beadSize } from "../pattern/bead-lines.js";
import type { Pattern } from "../pattern/pattern.js";
import type { BeadRunSpec } from "../pattern/schema.js";
import type { Profile } from "../profile/profile.js";
import { showLength } from "../units.js";
import type { Wrap } from "../wrap/wrap.js";
import type { Bead } from "./bead.js";
import { type PlacedRun, placeOnCircle, placeOnSeat, repeatBeads, requireAtMost } from "./bead-run.js";
import { mergeRuns, OVERLAP_LIMIT } from "./bead-set.js";

/** What a bead run came to. */
export interface BeadRunReport {
  /** The region's name, or what the run follows. */
  readonly run: string;
  /** Where it stands in the document. */
  readonly path: string;
  /** Beads on the ring, those met from another run not counted again. */
  readonly count: number;
  /** mm */
  readonly diameter: number;
  /** Mean arc length between neighbours in space, mm, and its least and largest over the run's lines. */
  readonly spacing: number;
  readonly spacingMin: number;
  readonly spacingMax: number;
  /** spacing over diameter. */
  readonly ratio: number;
  /** Whether the beads stand on the rails rather than on the relief. */
  readonly onRail: boolean;
}

/** The runs with all their beads. */
export interface PlacedRuns {
  readonly runs: readonly Run[];
  /** What each run came to, in the same order. */
  readonly reports: readonly BeadRunReport[];
  /** All beads of the ring; where two runs share one it is here once. */
  readonly beads: readonly Bead[];
}

/** One run: its beads before those shared with other runs are merged. */
export interface Run extends Pick<BeadRunReport, "run" | "path" | "onRail"> {
  readonly beads: readonly Bead[];
  readonly bead: BeadSize;
  /** Spacing of each line, mm. */
  readonly spacings: readonly number[];
}

export interface PlaceRunsOptions {
  readonly profile: Pick<Profile, "rails">;
  readonly wrap: Wrap;
  readonly pattern: Pick<Pattern, "beadLines">;
  /** The document's own runs; those along paths are in the pattern. */
  readonly beadRuns: readonly BeadRunSpec[];
  /** Largest number of beads that is placed. */
  readonly maxBeads: number;
  readonly warn: Warn;
}

/** Most beads that are placed where nothing else is said: over ten times what the richest demo band carries. */
export const MAX_BEADS = 20_000;

/** Gap over diameter above which a run looks broken: 25 % of a diameter. */
const GAP_LIMIT = 0.25;

/**
 * Places every bead run; warns of beads that overlap, gap or crowd.
 *
 * @throws AnnuletError `too-many-beads`, `no-rails`, `beads-off-seat`
 */
export function placeRuns(options: PlaceRunsOptions): PlacedRuns {
  const { wrap, maxBeads, warn } = options;
  const runs = [...patternRuns(options), ...documentRuns(options)];
  const total = runs.reduce((sum, run) => sum + run.beads.length, 0);
  requireAtMost(total, { most: maxBeads, path: "beads" });
  const set = mergeRuns(runs.map((run) => run.beads));
  const reports = runs.map((run, i) => reportRun(run, set.merged[i]));
  for (const report of reports) warnSpacing(report, warn);
  warnCrowded(set.crowded, wrap, warn);
  return { runs, reports, beads: set.beads };
}

function patternRuns({ pattern, wrap, maxBeads }: PlaceRunsOptions): Run[] {
  return pattern.beadLines.map(({ run, path, lines, copies, bead, height }: BeadLines) => {
    const placed = lines.map((line) => placeOnSeat(line, wrap, { ...bead, height, most: maxBeads, path }));
    requireAtMost(copies * placed.reduce((sum, one) => sum + one.beads.length, 0), { most: maxBeads, path });
    return toRun({ run, path, onRail: false }, bead, placed, copies);
  });
}

function documentRuns({ beadRuns, profile, wrap, maxBeads }: PlaceRunsOptions): Run[] {
  return beadRuns.flatMap((spec, i) => {
    const path = `beads[${i}]`;
    const bead = beadSize(spec);
    const place = { ...bead, height: spec.height, most: maxBeads, path };
    const circle = (v: number) => {
      const [w, r] = wrap.section(v, spec.height);
      return placeOnCircle({ w, radius: r, outward: wrap.normal(v), startAngle: wrap.startAngle }, place);
    };
    const { along } = spec;
    if (along === "rail") {
      const { faces, top } = requireRails(profile, path);
      const placed = faces.map(([low, high]) =>
        placeOnCircle({ w: (low + high) / 2, radius: top, outward: [0, 1], startAngle: wrap.startAngle }, place),
      );
      return [toRun({ run: "rail", path, onRail: true }, bead, placed, 1)];
    }
    if (along === "seat-edge") {
      const inset = spec.inset ?? EDGE_INSET * bead.diameter;
      const v = wrap.seatLength / 2 - inset;
      if (v < 0) throw pastMiddle(inset, wrap, path);
      return [toRun({ run: "seat-edge", path, onRail: false }, bead, [circle(-v), circle(v)], 1)];
    }
    if ("path" in along) return [];
    if (Math.abs(along.v) > wrap.seatLength / 2) throw offSeat(along.v, wrap, path);
    return [toRun({ run: `v ${along.v}`, path, onRail: false }, bead, [circle(along.v)], 1)];
  });
}

/** Diameters from the seat's edge to a seat-edge bead's centre: it bites into the rail, not merely touches it. */
const EDGE_INSET = 0.45;

function toRun(
  what: Pick<Run, "run" | "path" | "onRail">,
  bead: BeadSize,
  placed: readonly PlacedRun[],
  copies: number,
): Run {
  return {
    ...what,
    bead,
    beads: placed.flatMap((run) => repeatBeads(run.beads, copies)),
    spacings: placed.flatMap((run) => (run.spacing === undefined ? [] : [run.spacing])),
  };
}

function reportRun({ run, path, onRail, beads, bead, spacings }: Run, merged: number): BeadRunReport {
  const spacing = spacings.reduce((sum, value) => sum + value, 0) / Math.max(1, spacings.length);
  return {
    run,
    path,
    onRail,
    count: beads.length - merged,
    diameter: bead.diameter,
    spacing,
    spacingMin: Math.min(spacing, ...spacings),
    spacingMax: Math.max(spacing, ...spacings),
    ratio: spacing / bead.diameter,
  };
}

function warnSpacing({ run, path, spacingMin, spacingMax, diameter, spacing }: BeadRunReport, warn: Warn): void {
  if (spacing === 0) return;
  const percent = (share: number) => `${Math.round(100 * share)} %`;
  const least = spacingMin / diameter;
  const most = spacingMax / diameter;
  if (least < 1 - OVERLAP_LIMIT) {
    warn({
      code: "beads-overlap",
      message: `beads of the run "${run}" overlap by ${percent(1 - least)} of their diameter`,
      path,
      value: Number(least.toFixed(3)),
      allowed: `a ratio of at least ${1 - OVERLAP_LIMIT}`,
      hint: "fewer or smaller beads, or a larger pitch",
    });
  }
  if (most > 1 + GAP_LIMIT) {
    warn({
      code: "beads-gap",
      message: `beads of the run "${run}" leave gaps of ${percent(most - 1)} of their diameter`,
      path,
      value: Number(most.toFixed(3)),
      allowed: `a ratio of at most ${1 + GAP_LIMIT}`,
      hint: "more or larger beads, or a smaller pitch",
    });
  }
}

function warnCrowded(crowded: readonly Bead[], wrap: Wrap, warn: Warn): void {
  if (crowded.length === 0) return;
  const [u, v] = wrap.inverse(...crowded[0].centre);
  warn({
    code: "beads-crowded",
    message: `${crowded.length} bead${crowded.length === 1 ? "" : "s"} overlap beads of another run by more than ${Math.round(100 * OVERLAP_LIMIT)} %, the first near u ${u.toFixed(2)}, v ${v.toFixed(2)} mm`,
    path: "beads",
    value: crowded.length,
    hint: "let runs meet end to end, where one bead serves both, or keep them apart",
  });
}

function requireRails(profile: PlaceRunsOptions["profile"], path: string): NonNullable<Profile["rails"]> {
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

function pastMiddle(inset: number, wrap: Wrap, path: string): AnnuletError {
  return new AnnuletError({
    code: "beads-off-seat",
    message: "the two runs along the seat's edges lie beyond its middle",
    path: `${path}.inset`,
    value: inset,
    allowed: `0 to ${showLength(wrap.seatLength / 2)}, half the seat`,
    hint: 'place them nearer to the edges, or one run in the middle with "along": {"v": 0}',
  });
}

function offSeat(v: number, wrap: Wrap, path: string): AnnuletError {
  const half = wrap.seatLength / 2;
  return new AnnuletError({
    code: "beads-off-seat",
    message: `the bead run lies ${showLength(Math.abs(v) - half)} beyond the edge of the seat`,
    path: `${path}.along.v`,
    value: v,
    allowed: `within ±${showLength(half)}`,
    hint: "move the run towards the middle of the band",
  });
}
