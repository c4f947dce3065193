/**
 * The steps of marks: what is cut out of the ring when all else stands, and what is then laid on.
 */

import type { Band } from "../band/band.js";
import { LEAST_WALL } from "../band/profile/least-sizes.js";
import { seatStations } from "../band/surface/seat-stations.js";
import { extent } from "../base/math/extent.js";
import type { Pausing } from "../base/pausing.js";
import { TURN } from "../base/units.js";
import type { Mark } from "../marks/mark.js";
import type { Mesh } from "../mesh/mesh.js";
import { placeStep, type Step } from "../mesh/step.js";
import { ACROSS_SHARE, mostChords } from "./facet-counts.js";
import { requireFloorWall } from "./floor-wall.js";
import { buildReliefs, buildSunk } from "./relief.js";

/** Marks as steps: cut out of the whole, then laid on. */
export interface MarkSteps {
  readonly steps: readonly Step[];
  /** The bodies of those that stand on the seat. */
  readonly onSeat: readonly Mesh[];
}

export interface MarkStepsOptions {
  readonly profile: Band;
  /** Facets round the whole band. */
  readonly facets: number;
  /** Largest chordal deviation, mm. */
  readonly tolerance: number;
  /** How far bodies must reach beyond a surface to intersect truly, mm. */
  readonly clear: number;
  /** Deepest sunk region of the pattern, mm. */
  readonly patternDepth: number;
  /** How far anything stands above the seat or a rail, mm. */
  readonly standing: number;
}

/**
 * Builds the marks' bodies.
 *
 * @throws AnnuletError `depth-too-large`
 */
export function* markSteps(marks: readonly Mark[], options: MarkStepsOptions): Pausing<MarkSteps> {
  const bodies: { mark: Mark; made: Mesh[] }[] = [];
  for (const mark of marks) bodies.push({ mark, made: yield* buildMark(mark, marks, options) });
  const meshes = (which: (mark: Mark) => boolean) =>
    bodies.filter(({ mark }) => which(mark)).flatMap(({ made }) => made);
  const steps = [
    placeStep(
      "sunk marks",
      "cut",
      meshes(({ body }) => body.mode === "sunk"),
    ),
    placeStep(
      "raised marks",
      "add",
      meshes(({ body }) => body.mode === "raised"),
    ),
  ];
  return {
    steps: steps.filter((step) => step.bodies().length > 0),
    onSeat: meshes(({ body, surface }) => body.mode === "raised" && surface.name === "seat"),
  };
}

function* buildMark(mark: Mark, marks: readonly Mark[], options: MarkStepsOptions): Pausing<Mesh[]> {
  const { surface, body } = mark;
  const { profile, facets, tolerance, clear, patternDepth, standing } = options;
  const { wrap } = surface;
  const outside = surface.name !== "bore";
  const sunk = marks.filter((other) => other.body.mode === "sunk" && other !== mark && overlap(other, mark));
  const deepest = (all: readonly Mark[]) => Math.max(0, ...all.map((other) => other.body.height));
  const isRaised = body.mode === "raised";
  const [height, depth] = isRaised ? [body.height, 0] : [0, body.height];
  const lines = profile.looks.map(surface.lineAt);
  const stations = seatStations(surface.line, (_, i) =>
    mostChords(
      lines.map((line) => line[i]),
      { height, depth, tolerance: tolerance * ACROSS_SHARE },
    ),
  );
  const bending = { wrap, facets, stations, repeats: 1 };
  const thinnest = Math.min(...profile.looks.map((angle) => profile.sizesAt(angle).thickness));
  if (isRaised) {
    const floor = deepest(sunk.filter((other) => other.surface.name === surface.name));
    const pits = surface.name === "seat" ? Math.max(floor, patternDepth) : floor;
    return yield* buildReliefs(body, { ...bending, sink: Math.min(clear + pits, thinnest / 2) });
  }
  const other = deepest(sunk.filter((one) => (one.surface.name !== "bore") !== outside));
  const opposite = outside ? other : Math.max(other, patternDepth);
  requireFloorWall(body, { profile, wrap, opposite });
  return yield* buildSunk(body, { ...bending, sink: outside ? clear + standing : clear });
}

/** Whether two marks stand over some same place of the finger, or come nearer along it than the least wall. */
function overlap(a: Mark, b: Mark): boolean {
  const [[a0, a1], [b0, b1]] = [a, b].map(({ box, surface }) => box.u.map((u) => u / surface.wrap.referenceRadius));
  const [c, d] = [a, b].map(({ box, surface: { wrap } }) =>
    extent(box.u.flatMap((u) => box.v.map((v) => wrap.lineAt(wrap.angleAt(u)).point(v, 0)[0]))),
  );
  if (c[0] >= d[1] + LEAST_WALL || d[0] >= c[1] + LEAST_WALL) return false;
  return [-1, 0, 1].some((turn) => a0 + turn * TURN < b1 && b0 < a1 + turn * TURN);
}
