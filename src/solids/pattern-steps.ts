/**
 * The steps of a pattern: what is raised is added, what is sunk or pierced is cut out, in the order of work.
 */
import type { Band } from "../band/band.js";
import { AnnuletError } from "../base/errors.js";
import type { Sector } from "../base/math/round.js";
import { FORGET, type Remember, rememberPausing } from "../base/memory.js";
import { finish, type Pausing } from "../base/pausing.js";
import type { Mesh } from "../mesh/mesh.js";
import type { Step } from "../mesh/step.js";
import { type WorkStep, workSteps } from "../pattern/work-steps.js";
import type { FlatBody } from "../relief/flat-body.js";
import { buildingHole } from "./build-hole.js";
import { requireEndsApart } from "./ends-apart.js";
import { requireFloorWall } from "./floor-wall.js";
import { type BendOptions, buildReliefs, buildSunk } from "./relief.js";
import { rememberMaking } from "./remember.js";
import { leastFacing, requireFacing } from "./upright-map.js";

export interface PatternStepsOptions {
  readonly profile: Band;
  /** How a body is bent round the band. */
  readonly bend: (body: FlatBody) => BendOptions;
  /** How far bodies must reach beyond a surface to intersect truly, mm. */
  readonly clear: number;
  /** What relief and cuts keep clear of; undefined where nothing is. */
  readonly keepClear: Mesh | undefined;
  /** Takes over meshes of the same bodies. Default: makes all. */
  readonly remember?: Remember | undefined;
  /** Is called for each body that is made, so that progress can be told. Default: nobody is told. */
  readonly onBody?: (() => void) | undefined;
}

/** A step whose bodies are made in pieces, one after the other. */
export interface PatternStep extends Step {
  readonly making: (sector?: Sector) => Pausing<readonly Mesh[]>;
}

/**
 * The pattern's bodies as steps.
 *
 * @throws AnnuletError `ends-meet`, `depth-too-large`; the steps' bodies `seat-too-steep`, `broken-too-large`
 */
export function patternSteps(bodies: readonly FlatBody[], options: PatternStepsOptions): PatternStep[] {
  let before: readonly FlatBody[] = [];
  return workSteps(bodies, ({ mode }) => mode).map((step) => {
    const own = stepOf(step, before, options);
    before = [...before, ...step.items];
    return own;
  });
}

/**
 * One step.
 *
 * @param before the bodies of all steps before it
 */
function stepOf(
  { op, items }: WorkStep<FlatBody>,
  before: readonly FlatBody[],
  options: PatternStepsOptions,
): PatternStep {
  const { profile, bend, clear, keepClear, remember: recall = FORGET, onBody } = options;
  for (const body of items) {
    const { wrap } = bend(body);
    requireEndsApart(body, wrap);
    requireFacing(body, wrap);
    if (body.mode === "sunk") requireFloorWall(body, { profile, wrap });
  }
  // A relief stands on the floor of what is sunk before it; tools reach clear of the relief that they go through.
  const floor = highestOf(before, "sunk");
  const foot = footDepth(profile, clear, floor);
  const reach = clear + highestOf(before, "raised");
  const build = (body: FlatBody, sector: Sector | undefined): Pausing<Mesh[]> => {
    const bending = { ...bend(body), sector };
    const { wrap, mirrors, ...plain } = bending;
    const by = ["mesh", plain, mirrors, foot, reach];
    onBody?.();
    const what = { by, of: [body, wrap, profile], said: NOTHING };
    return rememberPausing(recall, what, () => named(body, make(body, bending)));
  };
  const make = function* (body: FlatBody, bending: BendOptions): Pausing<Mesh[]> {
    if (body.mode === "raised") {
      return yield* buildReliefs(body, { ...bending, sink: floor + (foot - floor) * leastFacing(body, bending.wrap) });
    }
    if (body.mode === "sunk") return yield* buildSunk(body, { ...bending, sink: reach });
    return [yield* buildingHole(body, { ...bending, profile, reach })];
  };
  const makeAll = function* (sector?: Sector): Pausing<readonly Mesh[]> {
    const meshes: Mesh[] = [];
    for (const body of items) {
      yield body.path;
      for (const mesh of yield* build(body, sector)) if (mesh.triangles.length > 0) meshes.push(mesh);
    }
    return meshes;
  };
  const making = rememberMaking(makeAll);
  return {
    name: op === "add" ? "relief" : "cuts",
    op,
    bodies: (sector) => finish(making(sector)),
    making,
    scope: "unit",
    keepClear,
    small: false,
  };
}

/** Nothing is said while a body is made. */
const NOTHING = () => 0;

/** Errors without a place get that of the region, and its name. */
function* named<Made>({ path, names }: FlatBody, make: Pausing<Made>): Pausing<Made> {
  try {
    return yield* make;
  } catch (error) {
    if (!(error instanceof AnnuletError) || error.path !== undefined) throw error;
    const [problem] = error.problems;
    const message = names.length === 0 ? problem.message : `${problem.message} (${names.join(", ")})`;
    throw new AnnuletError({ ...problem, message, path }, { cause: error });
  }
}

/** The greatest height of the bodies of a mode, of what is sunk its depth, mm; 0 where there are none. */
export function highestOf(bodies: readonly FlatBody[], mode: FlatBody["mode"]): number {
  return Math.max(0, ...bodies.map((body) => (body.mode === mode ? body.height : 0)));
}

/**
 * How deep a relief's foot stands in the band, mm: true intersection below the floor on which it stands, at most half way
 * from there to the bore.
 *
 * @param floor mm below the seat
 */
function footDepth(band: Band, clear: number, floor: number): number {
  const walls = band.looks.map((angle) => {
    const { seat, outsideRadius, boreRadius } = band.sectionAt(angle);
    const lowest = Math.min(
      ...seat.map((segment) => (segment.kind === "line" ? Math.min(segment.from[1], segment.to[1]) : Infinity)),
    );
    return (Math.min(lowest, outsideRadius) - boreRadius - floor) / 2;
  });
  return floor + Math.min(clear, ...walls);
}
