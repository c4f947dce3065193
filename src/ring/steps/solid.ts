/**
 * The solid half: beads → bodies → union → checks → measure, and what the solid is judged by.
 */
import type { Point3 } from "../../base/math/point.js";
import { degrees } from "../../base/units.js";
import { type PlacedRuns, placeRuns } from "../../beads/place-runs.js";
import type { PatternSpec } from "../../design/pattern/pattern.js";
import { withoutArt } from "../../design/without-art.js";
import type { Judgement } from "../../judge/castability/judge.js";
import { draftRays, RAYS } from "../../judge/castability/rays.js";
import { type CrossingCheck, withCrossings } from "../../judge/check-crossings.js";
import { decimateSolid, requireDeviation } from "../../judge/decimate-solid.js";
import { type UnrolledBand, unrollBand } from "../../judge/details/unrolled-band.js";
import { checkingAlike, checkSolid, requireClosed, type SolidCheck } from "../../judge/gate.js";
import { checkHeadroom } from "../../judge/headroom.js";
import { isInPieces, liesClear } from "../../judge/loose.js";
import { RingParts } from "../../judge/parts/ring-parts.js";
import { type Compare, type Proof, proofOf, requireDrawn } from "../../judge/proof/prove.js";
import { regionsNear } from "../../judge/regions-near.js";
import { gateRing } from "../../judge/ring.js";
import { type Measure, measureMesh, measureTurned } from "../../measure/measure.js";
import type { Mesh } from "../../mesh/mesh.js";
import type { Turned } from "../../mesh/turned.js";
import { detailLevels } from "../../solids/detail.js";
import { makeParts, type Parts } from "../../solids/parts.js";
import { type PlacedStones, placeStones } from "../../stones/place-stones.js";
import { manifoldKernel } from "../../union/kernels/manifold.js";
import { type Made, type UnionResult, uniteRing } from "../../union/union.js";
import type { From, OfDesign, OfOption, Thinned } from "../answers.js";
import type { Tools } from "../stage.js";

export function deviation({ option }: OfOption<"decimate">): number {
  return requireDeviation(option.decimate);
}

export function beads(
  {
    design,
    option,
    ...laid
  }: OfDesign<"beads"> & OfOption<"maxBeads"> & From<"coverStop" | "profile" | "pattern" | "wrap">,
  { warn, remember }: Tools,
): PlacedRuns {
  return placeRuns({ ...laid, beadRuns: design.beads, maxBeads: option.maxBeads, warn, remember });
}

/** What of a pattern stones in its tiles depend on: not what is raised and cut there. */
export function stoneTiles({ design: { stones, pattern } }: OfDesign<"stones" | "pattern">): PatternSpec | undefined {
  return stones.length === 0 || pattern === undefined ? undefined : withoutArt(pattern);
}

export function stones(
  from: OfDesign<"stones" | "gems" | "tolerance"> &
    From<"stoneTiles" | "coverStop" | "fit" | "seat" | "drawings" | "profile" | "wrap">,
  { warn }: Tools,
): PlacedStones {
  const { design, stoneTiles: pattern, coverStop, fit, seat, drawings, profile: band, wrap } = from;
  const { stones: groups, gems: ownGems = [], tolerance } = design;
  const { seatLength, lengths } = seat;
  const ground = { band, wrap, pattern, fit, seatLength, lengths, coverStop, drawings, tolerance, warn };
  return placeStones({ ...ground, groups, ownGems });
}

export function parts(
  from: OfDesign<"beads" | "tolerance"> &
    OfOption<"detail"> &
    From<"profile" | "pattern" | "wrap" | "marks" | "beads" | "stones">,
  { warn, remember, work }: Tools,
): Promise<Parts> {
  const { design, option, beads: placed, stones: set, profile, pattern, wrap, marks } = from;
  const { stones } = set;
  const { tolerance, beads: beadRuns } = design;
  const { detail } = option;
  const how = { tolerance, beadRuns, placed, detail, warn, remember, work };
  return work.through(makeParts({ profile, pattern, wrap, marks, stones, ...how }));
}

/** mm from the relief's top up to the rails; undefined without one of them. */
export function headroom({
  design,
  profile,
  parts,
}: OfDesign<"proud"> & From<"profile" | "parts">): number | undefined {
  return checkHeadroom(profile.rails?.top, parts.reliefRadius, design.proud);
}

/** What tells of a mesh whether it is the ring that was drawn. */
export function prove(
  {
    design,
    option,
    profile,
    beads: { beads: all },
    stones: { stones: set },
    ...laid
  }: OfDesign<"tolerance"> & OfOption<"detail"> & From<"profile" | "pattern" | "wrap" | "marks" | "beads" | "stones">,
  { remember }: Tools,
): Compare {
  const level = detailLevels[option.detail];
  const tolerance = Math.max(design.tolerance, level.tolerance);
  return proofOf({ ...laid, band: profile, beads: all, stones: set, tolerance, beadDeviation: level.bead, remember });
}

/** What tells which part of the document a place of the ring comes from. */
export function ringParts({
  design,
  option,
  ...laid
}: OfDesign<"tolerance"> & OfOption<"detail"> & From<"profile" | "pattern" | "wrap" | "marks" | "beads">): RingParts {
  return new RingParts({ ...laid, tolerance: Math.max(design.tolerance, detailLevels[option.detail].tolerance) });
}

/**
 * Pieces this far apart touch on no road, mm: all are made of the same bodies, and tidying and seams move points by a fifth of it
 * at most.
 */
const CLEAR = 0.01;

export async function union(
  { option, parts, prove: compare }: OfOption<"kernel" | "detail"> & From<"parts" | "prove">,
  { signal, work }: Tools,
): Promise<UnionResult<SolidCheck, Proof>> {
  // Whether a ring crosses itself is looked for in one of its units, which costs 1 to 8 % of its build; in a whole one it would
  // cost 15 to 25 %. A draft, which is built again at each change and never cast, is not searched.
  const search = (units: number) => units > 1 && option.detail !== "draft";
  const check = async (mesh: Mesh, { units }: Made, turned?: Turned) => {
    const found = await work.through(checkingAlike(mesh, turned));
    return search(units) ? withCrossings(mesh, found, { units, signal, step: () => work.step() }) : found;
  };
  // What is in pieces that lie clear of each other, and is what was drawn, will not hang together on another road.
  const isMeant = (mesh: Mesh, found: SolidCheck, made: Made) =>
    isInPieces(found) && liesClear(mesh, CLEAR) && compare(mesh, found, made).agrees;
  const how = { kernel: option.kernel, fallback: manifoldKernel, check, prove: compare, isMeant, signal, work };
  const united = await uniteRing<SolidCheck, Proof>(parts, how);
  if (united.proof !== undefined) requireDrawn(united.proof);
  return united;
}

export async function decimated({ deviation, union }: From<"deviation" | "union">, tools: Tools): Promise<Thinned> {
  const accept = (mesh: Mesh) => checkSolid(mesh).closed;
  const { mesh, decimation } = await decimateSolid(union.mesh, { ...tools, deviation, accept });
  if (decimation === undefined) return { ...union, decimation };
  return { mesh, decimation, check: checkSolid(mesh), turned: undefined };
}

export function gate(
  {
    design,
    genus,
    parts,
    thinned,
    pattern,
    wrap,
  }: OfDesign<"tolerance"> & From<"genus" | "parts" | "thinned" | "pattern" | "wrap">,
  { warn }: Tools,
): SolidCheck & { readonly genus: number } {
  const { tolerance } = design;
  const regionsAt = (places: readonly Point3[]) => regionsNear(places, pattern.bodies, wrap);
  return gateRing(thinned.mesh, thinned.check, { genus, balls: parts.spheres, tolerance, warn, regionsAt });
}

/** That the ring nowhere crosses itself: looked for where that was too dear for a build. */
export async function uncrossed(
  { gate: check, solid, turned, pattern, wrap }: From<"gate" | "solid" | "turned" | "pattern" | "wrap">,
  { signal }: Tools,
): Promise<CrossingCheck> {
  const units = turned?.units ?? 1;
  const found = "crossings" in check ? (check as CrossingCheck) : await withCrossings(solid, check, { units, signal });
  return requireClosed(found, (places) => regionsNear(places, pattern.bodies, wrap));
}

export function measure({ solid, turned }: From<"solid" | "turned">): Measure {
  return turned === undefined ? measureMesh(solid) : measureTurned(turned);
}

export async function judgement(
  from: OfDesign<"tolerance"> &
    OfOption<"detail"> &
    From<
      | "profile"
      | "pattern"
      | "wrap"
      | "marks"
      | "beads"
      | "stones"
      | "parts"
      | "genus"
      | "gate"
      | "solid"
      | "turned"
      | "rules"
    >,
): Promise<Judgement> {
  // Its rays come from a library that takes a while to load, and few questions need them.
  const { judge } = await import("../../judge/castability/judge.js");
  const { design, option, profile, pattern, wrap, marks, beads, stones, parts, solid: mesh, turned, rules } = from;
  const { tolerance } = design;
  const rays = option.detail === "draft" ? draftRays(turned?.units ?? 1) : RAYS;
  const laid = { profile, pattern, wrap, marks, stones, runs: beads.reports, beads: parts.spheres };
  return judge({ ...laid, mesh, rays, tolerance, handles: { found: from.gate.genus, implied: from.genus } }, rules);
}

/** What the drawing of findings shows. */
export function unrolledBand({ profile, pattern, wrap }: From<"profile" | "pattern" | "wrap">): UnrolledBand {
  return unrollBand(pattern, {
    around: wrap.round,
    seatLength: profile.seatLength,
    start: degrees(wrap.startAngle),
  });
}
