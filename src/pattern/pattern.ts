/**
 * The flat pattern, complete: raised bodies and the lines of bead runs, from the document's regions.
 */
import { AnnuletError, type Warn } from "../errors.js";
import type { Profile } from "../profile/profile.js";
import { showLength } from "../units.js";
import { type Art, completeArt, completeLines } from "./art.js";
import { clipLines } from "./clip-lines.js";
import type { Fit } from "./fit.js";
import type { GridPath } from "./grid.js";
import { takePeriods } from "./period.js";
import { type GridRegion, offset, unite } from "./polygons.js";
import { type RunLine, runLines } from "./runs.js";
import { type BeadRunSpec, PATTERN_DEFAULTS, type PatternSpec, type RegionSpec } from "./schema.js";
import { type ReliefShape, raiseRegion } from "./section.js";
import { makeStrip, type Strip, steps } from "./strip.js";
import { tidy } from "./tidy.js";

/** A bead run as lines on the flat seat. */
export interface BeadLines {
  /** Name for messages and reports. */
  readonly run: string;
  /** Where it stands in the document. */
  readonly path: string;
  readonly lines: readonly RunLine[];
  /** How often the lines are repeated round the band. */
  readonly copies: number;
  readonly bead: BeadSize;
  /** mm above the seat of the surface that carries the beads. */
  readonly height: number;
}

/** Size and spacing of a run's beads. */
export interface BeadSize {
  /** mm */
  readonly diameter: number;
  /** Wanted spacing over diameter. */
  readonly pitch: number;
  readonly count: number | undefined;
  /** Share of the diameter below the surface. */
  readonly embed: number;
}

export interface Pattern {
  readonly reliefs: readonly ReliefShape[];
  readonly beadLines: readonly BeadLines[];
  /** Height of the highest region above the seat, mm; 0 where there is none. */
  readonly height: number;
  /** Equal tiles that make the whole round: 1 where there is no pattern or it stops. */
  readonly repeats: number;
}

export interface PatternOptions {
  readonly profile: Pick<Profile, "seatLength" | "rails">;
  /** Largest chordal deviation of the mesh, mm. */
  readonly tolerance: number;
  readonly warn: Warn;
}

/** Completes the pattern of a design. `runs` are the document's own bead runs; those that are no paths are left alone. */
export function completePattern(
  spec: PatternSpec,
  runs: readonly BeadRunSpec[],
  fit: Fit,
  { profile, tolerance, warn }: PatternOptions,
): Pattern {
  const strip = makeStrip(fit, spec.symmetry, profile.seatLength, tolerance);
  const drawn = spec.regions.map((region, i): Drawn => {
    const path = `pattern.regions[${i}]`;
    const art = completeArt(strip, region, path, warn);
    requireOnSeat(strip, art.region, path);
    return { spec: region, path, name: region.name ?? `region ${i + 1}`, art };
  });
  return {
    reliefs: raiseAll(strip, drawn, profile.rails === undefined ? 0 : UNDER_RAIL, warn),
    beadLines: [...drawn.flatMap((region) => regionBeads(strip, region)), ...pathRuns(strip, runs)],
    height: Math.max(0, ...spec.regions.map((region) => region.height)),
    repeats: strip.periodic ? strip.repeats : 1,
  };
}

/** How far relief that reaches the seat's edge goes on beneath the rail, mm, beyond its own rounding. */
const UNDER_RAIL = 0.05;

/**
 * The pattern of a band without one.
 *
 * @throws AnnuletError `no-pattern` where a bead run follows a path of the tile that is not there
 */
export function noPattern(runs: readonly BeadRunSpec[]): Pattern {
  const lost = runs.findIndex(({ along }) => typeof along !== "string" && "path" in along);
  if (lost === -1) return { reliefs: [], beadLines: [], height: 0, repeats: 1 };
  throw new AnnuletError({
    code: "no-pattern",
    message: "the bead run follows a path in the tile, but the design has no pattern and so no tile",
    path: `beads[${lost}].along.path`,
    allowed: '"rail", "seat-edge" or {"v": …} on a band without pattern',
    hint: 'add "pattern": {} for a tile as square as the seat is long',
  });
}

/** A run's bead size with defaults filled in. */
export function beadSize({
  diameter,
  pitch,
  count,
  embed,
}: Pick<BeadRunSpec, "diameter" | "pitch" | "count" | "embed">): BeadSize {
  return { diameter, pitch: pitch ?? PATTERN_DEFAULTS.bead.pitch, count, embed };
}

interface Drawn {
  readonly spec: RegionSpec;
  readonly path: string;
  readonly name: string;
  readonly art: Art;
}

/** Raises the regions; those of one height and rounding are united first, so that no two tops lie in each other. */
function raiseAll(strip: Strip, drawn: readonly Drawn[], underRail: number, warn: Warn): ReliefShape[] {
  const sections = new Map<string, Drawn[]>();
  for (const region of drawn) {
    const key = `${region.spec.height} ${region.spec.round}`;
    sections.set(key, [...(sections.get(key) ?? []), region]);
  }
  return [...sections.values()].flatMap((members) => {
    const [{ spec, path, art }] = members;
    const together = members.length === 1 ? art.region : unite(members.flatMap((one) => one.art.region));
    const whole = strip.periodic ? together : takePeriods(strip, together, 0, 1);
    const clean = whole === art.region ? whole : tidy(strip, whole, path, warn);
    const under = underRail > 0 ? underRail + spec.round : 0;
    const names = members.map((one) => one.name);
    return (
      raiseRegion(strip, reachUnder(strip, clean, under), { height: spec.height, round: spec.round, names, path }) ?? []
    );
  });
}

/** Vertices on the seat's edge go on beneath the rail, so that the body's end does not lie in the rail's wall. */
function reachUnder(strip: Strip, region: GridRegion, under: number): GridRegion {
  if (under === 0) return region;
  const limit = strip.halfSeat - steps(strip, EDGE_REACH);
  const beyond = Math.round(strip.halfSeat + steps(strip, under));
  return region.map((ring) =>
    ring.map((point) => (Math.abs(point.y) < limit ? point : { ...point, y: Math.sign(point.y) * beyond })),
  );
}

/** Art within this of the seat's edge touches it, mm. */
const EDGE_REACH = 2e-3;

function requireOnSeat(strip: Strip, region: GridRegion, path: string): void {
  let most = 0;
  for (const ring of region) for (const { y } of ring) most = Math.max(most, Math.abs(y));
  const over = (most - strip.halfSeat) / strip.grid.scale;
  if (over <= EDGE_REACH) return;
  throw new AnnuletError({
    code: "region-outside-seat",
    message: `the region reaches ${showLength(over)} beyond the edge of the seat`,
    path,
    value: Number((most / strip.grid.scale).toFixed(3)),
    allowed: `within ${showLength(strip.halfSeat / strip.grid.scale)} of the seat's middle line`,
    hint: "draw it lower, make its ribbon narrower, or make the band wider",
  });
}

function regionBeads(strip: Strip, { spec, path, name, art }: Drawn): BeadLines[] {
  if (spec.beads === undefined) return [];
  const { on } = spec.beads;
  if (on === "centre" && spec.ribbon === undefined) {
    throw new AnnuletError({
      code: "no-centre-line",
      message: "a filled region has no centre line for its beads",
      path: `${path}.beads.on`,
      value: on,
      allowed: '"border", or mm inside the outline',
      hint: 'say "on": "border", or give the region a ribbon',
    });
  }
  const loops = (rings: GridRegion) => rings.map((points: GridPath) => ({ points, closed: true }));
  const chains = on === "centre" ? art.centre : loops(on === "border" ? outlineOf(art) : inside(strip, art, on, path));
  return [
    toBeadLines(strip, chains, { run: name, path: `${path}.beads`, bead: beadSize(spec.beads), height: spec.height }),
  ];
}

/** The drawn border where there is one; the outline of a ribbon along an open line otherwise. */
function outlineOf(art: Art): GridRegion {
  return art.border.length > 0 ? art.border : art.region;
}

function inside(strip: Strip, art: Art, distance: number, path: string): GridRegion {
  const rings = offset(outlineOf(art), -steps(strip, distance), "miter", strip.arcTolerance);
  if (rings.length > 0) return rings;
  throw new AnnuletError({
    code: "beads-off-region",
    message: `nothing of the region lies ${showLength(distance)} inside its outline`,
    path: `${path}.beads.on`,
    value: distance,
    hint: "place the beads nearer to the outline",
  });
}

function pathRuns(strip: Strip, runs: readonly BeadRunSpec[]): BeadLines[] {
  return runs.flatMap((run, i) => {
    if (typeof run.along === "string" || !("path" in run.along)) return [];
    const path = `beads[${i}]`;
    const chains = completeLines(strip, run.along, `${path}.along.path`);
    return [toBeadLines(strip, chains, { run: `path ${i + 1}`, path, bead: beadSize(run), height: run.height })];
  });
}

function toBeadLines(
  strip: Strip,
  chains: Art["centre"],
  rest: Pick<BeadLines, "run" | "path" | "bead" | "height">,
): BeadLines {
  const lines = runLines(strip, strip.periodic ? chains : clipLines(chains, 0, strip.repeats * strip.grid.tile));
  return { ...rest, lines, copies: strip.periodic ? strip.repeats : 1 };
}
