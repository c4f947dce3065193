/**
 * The steps of a ring: band, pattern, beads, marks; with what is known of each bead run.
 *
 * Beads and bodies are made exactly alike here, on every road, so that all roads give one solid.
 */

import type { Band } from "../band/band.js";
import { evenStations, seatStations } from "../band/surface/seat-stations.js";
import { AnnuletError } from "../base/errors.js";
import type { RoundSymmetry, Sector } from "../base/math/round.js";
import { FORGET } from "../base/memory.js";
import type { Pausing } from "../base/pausing.js";
import type { Work } from "../base/work.js";
import type { Bead } from "../beads/bead.js";
import { buildBeads } from "../beads/bead-bodies.js";
import type { BeadRunReport } from "../beads/bead-report.js";
import { MAX_BEADS, type PlacedRuns, type PlaceRunsOptions, placeRuns, type Run } from "../beads/place-runs.js";
import { requireClearOfFilling } from "../marks/clear-of-filling.js";
import type { Marks } from "../marks/marks.js";
import type { Mesh } from "../mesh/mesh.js";
import type { Step } from "../mesh/step.js";
import type { Pattern } from "../pattern/laid-out.js";
import type { FlatBody } from "../relief/flat-body.js";
import { keepBeadsClear } from "../stones/keep-beads-clear.js";
import type { PlacedStone } from "../stones/placed-stone.js";
import { buildBand } from "./build-band.js";
import { buildHole } from "./build-hole.js";
import { clearBeads, clearField } from "./clear-field.js";
import { type Detail, detailLevels } from "./detail.js";
import { ACROSS_SHARE, AROUND_SHARE, bendRadius, chordsAcross, facetCount, mostChords } from "./facet-counts.js";
import { leastTriangles } from "./least-triangles.js";
import { markSteps } from "./mark-steps.js";
import { highestOf, type PatternStep, patternSteps } from "./pattern-steps.js";
import type { BendOptions } from "./relief.js";
import { remember } from "./remember.js";
import { hollowSpheres, mostStoneUnits, scopesOf, stoneSteps } from "./stone-steps.js";
import { cutNear, findLikeness, type Likeness, symmetryOf } from "./symmetry.js";
import type { FlatMirrors } from "./tile.js";

/** The steps that make the ring, with what is known of them. */
export interface Parts {
  /** The band first. */
  readonly steps: readonly Step[];
  /** How the ring comes again; undefined where it does not. */
  readonly symmetry: RoundSymmetry | undefined;
  /** Where near an angle it may be cut. */
  readonly cutNear: (angle: number) => number;
  /** The pattern's holes that are not made because of what is kept clear. */
  readonly lostHoles: number;
  /** The beads as spheres, in the order of their meshes. */
  readonly spheres: readonly Bead[];
  readonly runs: readonly BeadRunReport[];
  /**
   * Largest radius that relief and its beads reach, mm; undefined where there are none. What stands on rails does not count.
   * On a band that tapers it is less by as much as the band is thinner there than at the top.
   */
  readonly reliefRadius: number | undefined;
}

export interface PartsOptions extends Omit<PlaceRunsOptions, "maxBeads"> {
  /** Largest number of beads that is placed. Default 20 000. */
  readonly maxBeads?: number;
  readonly profile: Band;
  readonly pattern: Pattern;
  /** The bead runs, where they have been placed already. Default: they are placed here. */
  readonly placed?: PlacedRuns;
  /** The stones in their places. Default none. */
  readonly stones?: readonly PlacedStone[];
  /** What stands at one place. Default nothing. */
  readonly marks?: Marks;
  /** Largest chordal deviation, mm. */
  readonly tolerance: number;
  /** How coarse the mesh may be beyond that. Default full. */
  readonly detail?: Detail;
  /** Counts against limits. Default: none is held. */
  readonly work?: Work;
}

const NO_MARKS: Marks = { marks: [], field: undefined };

/** Steps that are told beside each body of the pattern. */
const FEW_STEPS = 4;

/** Makes the steps of the ring. */
export function* makeParts(options: PartsOptions): Pausing<Parts> {
  const { profile, pattern, warn, work } = options;
  work?.expect(pattern.bodies.length + FEW_STEPS);
  const { marks, field } = options.marks ?? NO_MARKS;
  requireClearOfFilling(
    { marks, field },
    pattern.bodies.find(({ filling }) => filling),
    options.wrap,
  );
  const placed = options.placed ?? placeRuns({ ...options, maxBeads: options.maxBeads ?? MAX_BEADS });
  requireFew(options, placed);
  yield undefined;
  const cleared = keepBeadsClear(clearBeads(placed.beads, field, warn), options.stones ?? [], options);
  const scopes = scopesOf(options.stones ?? [], mostUnits(options, placed));
  const frame = yield* frameOf(options, cleared, scopes.unit);
  const { likeness, facets, tolerance, bend } = frame;
  const clear = clearance(tolerance);
  const standing = standingOf(options, likeness.beads);
  const startAngle = options.wrap.angleAt(likeness.axis);
  const marked = yield* markSteps(marks, {
    profile,
    facets,
    tolerance,
    clear,
    patternDepth: highestOf(pattern.bodies, "sunk"),
    standing,
  });
  const clearing = clearingOf(options, frame, clear);
  const stepsOf = (filling: boolean) =>
    patternSteps(
      likeness.bodies.filter((body) => (body.filling === true) === filling),
      {
        profile,
        bend,
        clear,
        keepClear: clearing?.body,
        remember: options.remember,
        onBody: work && (() => work.step()),
      },
    );
  const [drawn, filled] = [stepsOf(false), stepsOf(true)];
  // What is kept clear at one place makes all units differ.
  const cut = [...likeness.beads, ...hollowSpheres(scopes.unit)];
  const symmetry = clearing ? undefined : symmetryOf({ ...likeness, beads: cut }, { wrap: options.wrap, facets });
  // Worked out now, so that what is wrong with a body is said before any of them is united.
  const raised: Mesh[] = [];
  for (const { op, making } of drawn) {
    const meshes = yield* makingSome(making, symmetry);
    if (op === "add") raised.push(...meshes);
  }
  return {
    steps: [
      bandStep(options, frame),
      ...drawn,
      ...filled,
      ...beadSteps(frame),
      ...stoneSteps(scopes, { band: profile, standing, clear, tolerance, facets, startAngle, warn }),
      ...marked.steps,
    ],
    symmetry,
    cutNear: (angle) => cutNear(angle, cut, { facets, startAngle }),
    runs: placed.reports,
    spheres: likeness.beads,
    lostHoles: clearing?.lostHoles ?? 0,
    reliefRadius: highest([...raised, ...marked.onSeat], placed.runs, profile),
  };
}

/**
 * The bodies of a step that the shortest road needs, or all of them where one cannot be cut off at that road's ends: what is
 * wrong with a body itself is then said, and the road fails by itself.
 */
function* makingSome(
  making: PatternStep["making"],
  symmetry: RoundSymmetry | undefined,
): ReturnType<PatternStep["making"]> {
  if (symmetry === undefined) return yield* making();
  try {
    return yield* making(symmetry.sectors[0]);
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
    return yield* making();
  }
}

/** What is kept clear for the hallmark; undefined where nothing is. */
function clearingOf({ profile, pattern, marks }: PartsOptions, { likeness, bend, bendOnce }: Frame, clear: number) {
  return (
    marks?.field &&
    clearField(marks.field, {
      ...bendOnce,
      profile,
      pattern,
      clear,
      holes: (reach) => {
        const pierced = likeness.bodies.filter(({ mode }) => mode === "pierced");
        return pierced.map((body) => buildHole(body, { ...bend(body), profile, reach }));
      },
    })
  );
}

/** The most units in which anything on the ring could come again. */
function mostUnits({ pattern, stones = [] }: PartsOptions, { beads }: PlacedRuns): number {
  if (pattern.bodies.length > 0) return pattern.repeats;
  return beads.length > 0 ? beads.length : mostStoneUnits(stones);
}

/** Triangles of a bead once it is united with the band (measured: 43 in a draft, 60 to 110 at full detail). */
const BEAD_TRIANGLES = 40;

/**
 * Holds about what the ring comes to, at the least, against the limits: facets are not counted.
 *
 * @throws AnnuletError `too-many-triangles`
 */
function requireFew({ pattern, work }: PartsOptions, placed: PlacedRuns): void {
  const counts = pattern.bodies.map((body) => ({ path: body.path, count: leastTriangles(body) }));
  const beads = placed.reports.map(({ path }, i) => ({ path, count: BEAD_TRIANGLES * placed.runs[i].beads.length }));
  const all = [...counts, ...beads];
  const total = all.reduce((sum, { count }) => sum + count, 0);
  const most = all.reduce<(typeof all)[number] | undefined>((a, b) => (a && a.count >= b.count ? a : b), undefined);
  work?.requireTriangles(total, most?.path);
}

/** What all bodies of a ring are built by. */
interface Frame {
  readonly level: (typeof detailLevels)[Detail];
  /** Largest chordal deviation, mm. */
  readonly tolerance: number;
  readonly likeness: Likeness;
  /** Facets round the whole band. */
  readonly facets: number;
  /** How a body is bent, and what stands once. */
  readonly bend: (body: FlatBody) => BendOptions;
  readonly bendOnce: BendOptions;
}

function* frameOf(options: PartsOptions, beads: readonly Bead[], stones: readonly PlacedStone[]): Pausing<Frame> {
  const { profile, wrap, pattern } = options;
  const level = detailLevels[options.detail ?? "full"];
  const tolerance = Math.max(options.tolerance, level.tolerance);
  const { marks } = options.marks ?? NO_MARKS;
  const outer = marks.filter(({ body, surface }) => body.mode === "raised" && surface.name !== "bore");
  const top = Math.max(pattern.height, ...outer.map(({ body }) => body.height));
  const around = tolerance * AROUND_SHARE;
  const radius = bendRadius(profile.bend, around) + top;
  const facetsFor = (copies: number) => facetCount(radius, around, copies);
  const likeness = yield* findLikeness({
    pattern,
    beads,
    stones,
    wrap,
    band: profile,
    tolerance: options.tolerance,
    outlines: tolerance,
    remember: options.remember,
  });
  const depth = highestOf(pattern.bodies, "sunk");
  const seats = profile.looks.map(profile.seatAt);
  const across = { height: pattern.height, depth, tolerance: tolerance * ACROSS_SHARE };
  const stations =
    wrap.keeps && !wrap.revolved
      ? evenStations(seats, (segment) => chordsAcross(segment, across))
      : seatStations(profile.seat, (_, i) =>
          mostChords(
            seats.map((seat) => seat[i]),
            across,
          ),
        );
  const bendSo = (copies: number, mirrors: FlatMirrors | undefined) => {
    return { wrap, facets: facetsFor(copies), stations, repeats: copies, mirrors };
  };
  const facets = facetsFor(pattern.bodies.length > 0 ? pattern.repeats : likeness.units);
  return {
    level,
    tolerance,
    likeness,
    facets,
    // Bodies that come round more often than the whole pattern have facets of their own, alike in each of their copies.
    bend: (body) => {
      const bending = bendSo(body.copies, likeness.mirrors.get(body));
      // What fills the plain zone is flush with the rails: its facets are theirs.
      return body.filling === true ? { ...bending, facets, aside: 0 } : bending;
    },
    bendOnce: bendSo(1, undefined),
  };
}

function bandStep({ profile, wrap, remember: recall = FORGET }: PartsOptions, { facets, likeness }: Frame): Step {
  const startAngle = wrap.angleAt(likeness.axis);
  const polylineAt = (angle: number) => profile.sectionAt(angle).polyline;
  const build = (sector: Sector | undefined) => buildBand(polylineAt, { facets, startAngle, sector });
  return {
    name: "band",
    op: "add",
    bodies: remember((sector?: Sector) => [
      recall(["band", facets, startAngle, sector], [profile], () => build(sector)),
    ]),
    scope: "unit",
    keepClear: undefined,
    small: false,
  };
}

/** None where there are no beads. */
function beadSteps({ likeness: { beads }, tolerance, level }: Frame): Step[] {
  if (beads.length === 0) return [];
  return [
    {
      name: "beads",
      op: "add",
      bodies: remember((sector?: Sector) => buildBeads(beads, { tolerance, coarsest: level.bead, sector })),
      scope: "unit",
      keepClear: undefined,
      small: true,
      gathered: level.gathersBeads,
    },
  ];
}

/** How far anything stands above the seat or a rail at most, mm. */
function standingOf({ pattern, beadRuns }: PartsOptions, beads: readonly Bead[]): number {
  const largest = beads.reduce((most, { radius }) => Math.max(most, radius), 0);
  return Math.max(pattern.height, ...beadRuns.map(({ height }) => height)) + 2 * largest;
}

/** Least depth of a relief's foot, mm, and as a multiple of the tolerance: clear of every facet of the band. */
const FOOT_DEPTH = 0.05;
const FOOT_TOLERANCES = 4;

/** How far bodies reach beyond a surface so that they truly intersect what it bounds, mm. */
function clearance(tolerance: number): number {
  return Math.max(FOOT_DEPTH, FOOT_TOLERANCES * tolerance);
}

function highest(reliefs: readonly Mesh[], runs: readonly Run[], band: Band): number | undefined {
  let most = Number.NEGATIVE_INFINITY;
  const thinnerAt = band.revolved
    ? () => 0
    : (x: number, y: number) => band.thickness - band.sizesAt(Math.atan2(y, x)).thickness;
  for (const { positions } of reliefs) {
    for (let i = 0; i < positions.length; i += 3) {
      const [x, y] = [positions[i], positions[i + 1]];
      most = Math.max(most, Math.hypot(x, y) + thinnerAt(x, y));
    }
  }
  for (const { beads, onRail } of runs) {
    if (onRail) continue;
    for (const { centre, radius } of beads) {
      const [x, y] = centre;
      most = Math.max(most, Math.hypot(x, y) + radius + thinnerAt(x, y));
    }
  }
  return Number.isFinite(most) ? most : undefined;
}
