/**
 * The bodies of a ring: band, relief, beads; with what is known of each bead run.
 */
import { chordCount, type Segment } from "../math/curve.js";
import type { Mesh } from "../mesh/mesh.js";
import type { Pattern } from "../pattern/pattern.js";
import type { Profile } from "../profile/profile.js";
import { seatStations } from "../wrap/wrap.js";
import { type Bead, beadMesh, geodesicSphere } from "./bead.js";
import type { BeadRunReport } from "./bead-report.js";
import { ACROSS_SHARE, AROUND_SHARE, facetCount } from "./facets.js";
import { type PlaceRunsOptions, placeRuns, type Run } from "./place-runs.js";
import { buildRelief } from "./relief.js";
import { sweepBand } from "./sweep.js";

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

export interface PartsOptions extends PlaceRunsOptions {
  readonly profile: Profile;
  readonly pattern: Pattern;
  /** Largest chordal deviation, mm. */
  readonly tolerance: number;
}

/**
 * Largest deviation of a bead's mesh as a share of its radius, however large the tolerance: at the default pitch of 1.05
 * neighbours keep a tenth of the radius between them, which two meshes that stand out must not close.
 */
const COARSEST_BEAD = 0.04;

/** Builds every body of the ring. */
export function makeParts(options: PartsOptions): Parts {
  const { profile, wrap, pattern, tolerance } = options;
  const { repeats } = pattern;
  const { runs, reports, beads } = placeRuns(options);

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
    beads: beads.map((bead) => beadMesh(bead, unit(bead.radius))),
    spheres: beads,
    runs: reports,
    reliefRadius: highest(reliefs, runs),
  };
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
