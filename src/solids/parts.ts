/**
 * The bodies of a ring: band, relief, beads; with what is known of each bead run.
 */
import { AnnuletError, type Warn } from "../errors.js";
import { chordCount, type Segment } from "../math/curve.js";
import type { Mesh } from "../mesh/mesh.js";
import { type BeadLines, type BeadSize, beadSize } from "../pattern/bead-lines.js";
import type { Pattern } from "../pattern/pattern.js";
import type { BeadRunSpec } from "../pattern/schema.js";
import type { Profile } from "../profile/profile.js";
import { showLength } from "../units.js";
import { seatStations, type Wrap } from "../wrap/wrap.js";
import { type Bead, beadMesh, geodesicSphere } from "./bead.js";
import { type PlacedRun, placeOnCircle, placeOnSeat, repeatBeads, requireAtMost } from "./bead-run.js";
import { mergeRuns, OVERLAP_LIMIT } from "./bead-set.js";
import { ACROSS_SHARE, AROUND_SHARE, facetCount } from "./facets.js";
import { buildRelief } from "./relief.js";
import { sweepBand } from "./sweep.js";

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

/** The bodies, ready to be united. */
export interface Parts {
  readonly band: Mesh;
  readonly reliefs: readonly Mesh[];
  readonly beads: readonly Mesh[];
  /** The beads as spheres, in the order of their meshes. */
  readonly spheres: readonly Bead[];
  readonly runs: readonly BeadRunReport[];
  /** Largest radius that relief and its beads reach, mm; undefined where there are none. Beads on rails do not count. */
  readonly reliefRadius: number | undefined;
}

export interface PartsOptions {
  readonly profile: Profile;
  readonly wrap: Wrap;
  readonly pattern: Pattern;
  /** The document's own runs; those along paths are in the pattern. */
  readonly beadRuns: readonly BeadRunSpec[];
  /** Largest chordal deviation, mm. */
  readonly tolerance: number;
  /** Largest number of beads that is built. */
  readonly maxBeads: number;
  readonly warn: Warn;
}

/** Gap over diameter above which a run looks broken: 25 % of a diameter. */
const GAP_LIMIT = 0.25;

/**
 * Largest deviation of a bead's mesh as a share of its radius, however large the tolerance: at the default pitch of 1.05
 * neighbours keep a tenth of the radius between them, which two meshes that stand out must not close.
 */
const COARSEST_BEAD = 0.04;

/** Builds every body of the ring. */
export function makeParts(options: PartsOptions): Parts {
  const { profile, wrap, pattern, tolerance, maxBeads, warn } = options;
  const { repeats } = pattern;
  const runs = [...patternRuns(options), ...documentRuns(options)];
  const total = runs.reduce((sum, run) => sum + run.beads.length, 0);
  requireAtMost(total, { most: maxBeads, path: "beads" });
  const set = mergeRuns(runs.map((run) => run.beads));
  const reports = runs.map((run, i) => reportRun(run, set.merged[i]));
  for (const report of reports) warnSpacing(report, warn);
  warnCrowded(set.crowded, wrap, warn);

  const facets = facetCount(profile.outsideRadius + pattern.height, tolerance * AROUND_SHARE, repeats);
  const stations = seatStations(profile.seat, (segment) =>
    chordsAbove(segment, pattern.height, tolerance * ACROSS_SHARE),
  );
  const sink = footDepth(profile, tolerance);
  const reliefs = pattern.reliefs.map((shape) => buildRelief(shape, { wrap, sink, facets, stations, repeats }));
  const spheres = new Map<number, Mesh>();
  const unit = (radius: number) => {
    const known = spheres.get(radius) ?? geodesicSphere(Math.min(tolerance / radius, COARSEST_BEAD));
    spheres.set(radius, known);
    return known;
  };
  return {
    band: sweepBand(profile.polyline, { facets, startAngle: wrap.startAngle }),
    reliefs,
    beads: set.beads.map((bead) => beadMesh(bead, unit(bead.radius))),
    spheres: set.beads,
    runs: reports,
    reliefRadius: highest(reliefs, runs),
  };
}

interface Run extends Pick<BeadRunReport, "run" | "path" | "onRail"> {
  readonly beads: readonly Bead[];
  readonly bead: BeadSize;
  /** Spacing of each line, mm. */
  readonly spacings: readonly number[];
}

function patternRuns({ pattern, wrap, maxBeads }: PartsOptions): Run[] {
  return pattern.beadLines.map(({ run, path, lines, copies, bead, height }: BeadLines) => {
    const placed = lines.map((line) => placeOnSeat(line, wrap, { ...bead, height, most: maxBeads, path }));
    requireAtMost(copies * placed.reduce((sum, one) => sum + one.beads.length, 0), { most: maxBeads, path });
    return toRun({ run, path, onRail: false }, bead, placed, copies);
  });
}

function documentRuns({ beadRuns, profile, wrap, maxBeads }: PartsOptions): Run[] {
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

function requireRails(profile: Profile, path: string): NonNullable<Profile["rails"]> {
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

/** Chords that keep a segment of the seat, and the surface `height` mm above it, within the tolerance. */
function chordsAbove(segment: Segment, height: number, tolerance: number): number {
  if (segment.kind === "line") return 1;
  // The seat runs from low w to high w: what turns clockwise bulges outward and grows with the height.
  const radius = segment.sweep < 0 ? segment.radius + height : segment.radius;
  return chordCount(radius, segment.sweep, tolerance);
}

/** Least depth of a relief's foot, mm, and as a multiple of the tolerance: clear of every facet of the band. */
const FOOT_DEPTH = 0.05;
const FOOT_TOLERANCES = 4;

/** How deep a relief's foot stands in the band, mm: true intersection, at most half way to the bore. */
function footDepth(profile: Profile, tolerance: number): number {
  const lowest = Math.min(
    ...profile.seat.map((segment) => (segment.kind === "line" ? Math.min(segment.from[1], segment.to[1]) : Infinity)),
  );
  const wall = (Math.min(lowest, profile.outsideRadius) - profile.boreRadius) / 2;
  return Math.min(Math.max(FOOT_DEPTH, FOOT_TOLERANCES * tolerance), wall);
}

function highest(reliefs: readonly Mesh[], runs: readonly Run[]): number | undefined {
  let most = Number.NEGATIVE_INFINITY;
  for (const { positions } of reliefs) {
    for (let i = 0; i < positions.length; i += 3) most = Math.max(most, Math.hypot(positions[i], positions[i + 1]));
  }
  for (const { beads, onRail } of runs) {
    if (onRail) continue;
    for (const { centre, radius } of beads) most = Math.max(most, Math.hypot(centre[0], centre[1]) + radius);
  }
  return Number.isFinite(most) ? most : undefined;
}
