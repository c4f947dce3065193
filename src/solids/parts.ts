/**
 * The bodies of a ring: band, relief, beads; with what is known of each bead run.
 */

import type { Band } from "../band/band.js";
import type { Profile } from "../band/profile/profile.js";
import { seatStations } from "../band/surface/seat-stations.js";
import type { RoundSymmetry, Stretch } from "../base/math/round.js";
import type { Bead } from "../beads/bead.js";
import { buildBeads } from "../beads/bead-bodies.js";
import type { BeadRunReport } from "../beads/bead-report.js";
import { MAX_BEADS, type PlacedRuns, type PlaceRunsOptions, placeRuns, type Run } from "../beads/place-runs.js";
import type { Marks } from "../marks/marks.js";
import type { Mesh } from "../mesh/mesh.js";
import type { Pattern } from "../pattern/laid-out.js";
import { workSteps } from "../pattern/work-steps.js";
import type { FlatBody } from "../relief/flat-body.js";
import { buildBand } from "./band.js";
import { clearBeads, clearField } from "./clear-field.js";
import { type Detail, detailLevels } from "./detail.js";
import { ACROSS_SHARE, AROUND_SHARE, chordsAcross, facetCount } from "./facets.js";
import { buildFinish, type Finish } from "./finish.js";
import { requireFloorWall } from "./floor-wall.js";
import { buildHole } from "./hole.js";
import { type BendOptions, buildReliefs, buildSunk } from "./relief.js";
import { findLikeness, symmetryOf } from "./symmetry.js";

/** The bodies, ready to be united, with what is known of them. */
export interface Parts {
  /** All bodies, or those that reach into a stretch, ended by flat faces beyond it. */
  readonly bodies: (stretch?: Stretch) => Bodies;
  /** How the ring comes again; undefined where it does not. */
  readonly symmetry: RoundSymmetry | undefined;
  /** What is cut out of all this, and what is then laid on; undefined where nothing is. */
  readonly finish: Finish | undefined;
  /** The pattern's holes that are not made because of what is kept clear. */
  readonly lostHoles: number;
  /** The beads as spheres, in the order of their meshes. */
  readonly spheres: readonly Bead[];
  readonly runs: readonly BeadRunReport[];
  /** Largest radius that relief and its beads reach, mm; undefined where there are none. What stands on rails does not count. */
  readonly reliefRadius: number | undefined;
}

/** The bodies of a ring, or of a stretch of one. */
export interface Bodies {
  readonly band: Mesh;
  /** What is cut out, in order, before the rest is united. */
  readonly cuts: readonly Cut[];
  /** Raised bodies that no cut goes through. */
  readonly reliefs: readonly Mesh[];
  readonly beads: readonly Mesh[];
  /** Where neither relief nor cuts of the pattern may be; undefined where nothing is kept clear. */
  readonly clear: Mesh | undefined;
}

/** Bodies that are cut out of the ring as it is by then. */
export interface Cut {
  /** Raised bodies that it goes through. */
  readonly under: readonly Mesh[];
  readonly tools: readonly Mesh[];
}

export interface PartsOptions extends Omit<PlaceRunsOptions, "maxBeads"> {
  /** Largest number of beads that is placed. Default 20 000. */
  readonly maxBeads?: number;
  readonly profile: Band;
  readonly pattern: Pattern;
  /** The bead runs, where they have been placed already. Default: they are placed here. */
  readonly placed?: PlacedRuns;
  /** What stands at one place. Default nothing. */
  readonly marks?: Marks;
  /** Largest chordal deviation, mm. */
  readonly tolerance: number;
  /** How coarse the mesh may be beyond that. Default full. */
  readonly detail?: Detail;
}

const NO_MARKS: Marks = { marks: [], field: undefined };

/** Builds every body of the ring. */
export function makeParts(options: PartsOptions): Parts {
  const { profile, wrap, pattern, warn } = options;
  const level = detailLevels[options.detail ?? "full"];
  const tolerance = Math.max(options.tolerance, level.tolerance);
  const { marks, field } = options.marks ?? NO_MARKS;
  const {
    runs,
    reports,
    beads: placed,
  } = options.placed ?? placeRuns({ ...options, maxBeads: options.maxBeads ?? MAX_BEADS });
  const left = clearBeads(placed, field, warn);

  const outer = marks.filter(({ body, surface }) => body.mode === "raised" && surface.name !== "bore");
  const top = Math.max(pattern.height, ...outer.map(({ body }) => body.height));
  const radius = profile.outsideRadius + top;
  const facetsFor = (copies: number) => facetCount(radius, tolerance * AROUND_SHARE, copies);
  const likeness = findLikeness({
    pattern,
    beads: left,
    wrap,
    polyline: profile.polyline,
    tolerance: options.tolerance,
  });
  const { beads } = likeness;
  const facets = facetsFor(pattern.bodies.length > 0 ? pattern.repeats : likeness.units);
  const deepest = highestOf(pattern.bodies, "sunk");
  const stations = seatStations(profile.seat, (segment) =>
    chordsAcross(segment, { height: pattern.height, depth: deepest, tolerance: tolerance * ACROSS_SHARE }),
  );
  // Bodies that come round more often than the whole pattern have facets of their own, alike in each of their copies.
  const bending = ({ copies }: { readonly copies: number }): BendOptions => {
    const mirrors = likeness.mirrored ? likeness : undefined;
    return { wrap, facets: facetsFor(copies), stations, repeats: copies, mirrors };
  };
  const clear = clearance(tolerance);
  const finish = buildFinish(marks, {
    ...{ profile, facets, tolerance, clear, patternDepth: deepest },
    standing: Math.max(pattern.height, ...options.beadRuns.map(({ height }) => height)) + largestBead(beads),
  });
  const clearing =
    field &&
    clearField(field, {
      ...{ ...bending({ copies: 1 }), profile, pattern, clear },
      holes: (reach) => {
        const pierced = pattern.bodies.filter(({ mode }) => mode === "pierced");
        return pierced.map((shape) => buildHole(shape, { ...bending(shape), profile, reach }));
      },
    });
  // What is kept clear at one place makes all units differ.
  const symmetry = clearing ? undefined : symmetryOf(likeness, { wrap, facets });

  const bodies = remember((stretch: Stretch | undefined): Bodies => {
    const bend = (shape: FlatBody) => ({ ...bending(shape), stretch });
    const cuts: Cut[] = [];
    let reliefs: Mesh[] = [];
    let before: readonly FlatBody[] = [];
    for (const { op, items } of workSteps(pattern.bodies, ({ mode }) => mode)) {
      if (op === "add") {
        // A relief stands on the floor of what is sunk before it.
        const sink = footDepth(profile, tolerance, highestOf(before, "sunk"));
        reliefs = items.flatMap((shape) => buildReliefs(shape, { ...bend(shape), sink }));
      } else {
        const reach = clearance(tolerance) + highestOf(before, "raised");
        cuts.push({ under: reliefs, tools: buildTools(items, { profile, wrap, reach, bend }) });
        reliefs = [];
      }
      before = [...before, ...items];
    }
    return {
      band: buildBand(profile.polyline, { facets, startAngle: wrap.angleAt(likeness.axis), stretch }),
      cuts,
      reliefs,
      beads: buildBeads(beads, { tolerance, coarsest: level.bead, stretch }),
      clear: clearing?.body,
    };
  });
  const unit = bodies(symmetry?.stretches[0]);
  const raised = [...unit.cuts.flatMap(({ under }) => under), ...unit.reliefs, ...(finish?.onSeat ?? [])];
  return {
    ...{ bodies, symmetry, finish, runs: reports, spheres: beads },
    lostHoles: clearing?.lostHoles ?? 0,
    reliefRadius: highest(raised, runs),
  };
}

/** Keeps the last result: one stretch is asked for by several. */
function remember<Key, Result>(make: (key?: Key) => Result): (key?: Key) => Result {
  let last: { readonly key: Key | undefined; readonly result: Result } | undefined;
  return (key) => {
    if (last === undefined || last.key !== key) last = { key, result: make(key) };
    return last.result;
  };
}

/** The greatest height of the bodies of a mode, of what is sunk its depth, mm; 0 where there are none. */
function highestOf(bodies: readonly FlatBody[], mode: FlatBody["mode"]): number {
  return Math.max(0, ...bodies.map((body) => (body.mode === mode ? body.height : 0)));
}

interface ToolOptions extends Pick<PartsOptions, "profile" | "wrap"> {
  /** How far tools reach above the seat, mm: clear of the relief that they go through. */
  readonly reach: number;
  readonly bend: (shape: FlatBody) => BendOptions;
}

/** What is cut out for sunk and pierced regions. */
function buildTools(bodies: readonly FlatBody[], { profile, wrap, reach, bend }: ToolOptions): Mesh[] {
  const sunk = bodies.filter(({ mode }) => mode === "sunk");
  for (const body of sunk) requireFloorWall(body, { profile, wrap });
  return bodies
    .map((body) =>
      body.mode === "sunk"
        ? buildSunk(body, { ...bend(body), sink: reach })
        : buildHole(body, { ...bend(body), profile, reach }),
    )
    .filter(({ triangles }) => triangles.length > 0);
}

/** Least depth of a relief's foot, mm, and as a multiple of the tolerance: clear of every facet of the band. */
const FOOT_DEPTH = 0.05;
const FOOT_TOLERANCES = 4;

/** How far bodies reach beyond a surface so that they truly intersect what it bounds, mm. */
function clearance(tolerance: number): number {
  return Math.max(FOOT_DEPTH, FOOT_TOLERANCES * tolerance);
}

/** Diameter of the largest bead, mm; 0 where there is none. */
function largestBead(beads: readonly Bead[]): number {
  return 2 * beads.reduce((most, { radius }) => Math.max(most, radius), 0);
}

/**
 * How deep a relief's foot stands in the band, mm: true intersection below the floor on which it stands, at most half way
 * from there to the bore.
 *
 * @param floor mm below the seat
 */
function footDepth(profile: Profile, tolerance: number, floor: number): number {
  const lowest = Math.min(
    ...profile.seat.map((segment) => (segment.kind === "line" ? Math.min(segment.from[1], segment.to[1]) : Infinity)),
  );
  const wall = (Math.min(lowest, profile.outsideRadius) - profile.boreRadius - floor) / 2;
  return floor + Math.min(clearance(tolerance), wall);
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
