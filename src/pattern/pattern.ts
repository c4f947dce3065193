/**
 * The flat pattern, complete: raised bodies and the lines of bead runs, from the document's regions.
 */
import { AnnuletError, type Warn } from "../errors.js";
import type { Profile } from "../profile/profile.js";
import { completeArt } from "./art.js";
import { type BeadLines, type DrawnRegion, pathRuns, regionBeads } from "./bead-lines.js";
import type { Fit } from "./fit.js";
import { takePeriods } from "./period.js";
import { unite } from "./polygons.js";
import type { BeadRunSpec, PatternSpec } from "./schema.js";
import { reachUnder, requireOnSeat } from "./seat-edge.js";
import { type ReliefShape, raiseRegion } from "./section.js";
import { makeStrip, type Strip } from "./strip.js";
import { tidy } from "./tidy.js";

/** A completed pattern. */
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

/** How far relief that reaches the seat's edge goes on beneath the rail, mm, beyond its own rounding. */
const UNDER_RAIL = 0.05;

/** Completes the pattern of a design. `runs` are the document's own bead runs; those that are no paths are left alone. */
export function completePattern(
  spec: PatternSpec,
  runs: readonly BeadRunSpec[],
  fit: Fit,
  { profile, tolerance, warn }: PatternOptions,
): Pattern {
  const strip = makeStrip(fit, spec.symmetry, profile.seatLength, tolerance);
  const drawn = spec.regions.map((region, i): DrawnRegion => {
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

/** Raises the regions; those of one height and rounding are united first, so that no two tops lie in each other. */
function raiseAll(strip: Strip, drawn: readonly DrawnRegion[], underRail: number, warn: Warn): ReliefShape[] {
  const sections = new Map<string, DrawnRegion[]>();
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
