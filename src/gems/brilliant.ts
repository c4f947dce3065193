/**
 * Brilliants on any outline of arcs: a table, eight bezels, eight stars and sixteen upper halves above the girdle, eight mains
 * and sixteen lower halves below it, and the culet. Angles and lengths are those of the laboratories' drawings of the round
 * brilliant (diamondcut.gia.edu; crown and pavilion angle are those of the main facets).
 *
 * All bezels touch the outline where a main facet stands and run to one point above the culet, so they are the sides of a
 * pyramid over the polygon of the outline's tangents; all mains likewise to one point below. A corner of the tangents, and
 * what is a share s of the way from the middle to it, lies in both facets beside it at the height of s: so all facets are
 * plane whatever the outline.
 */
import { type Arc, chordCount, divideSegment, segmentStart } from "../base/math/curve.js";
import type { Point2, Point3 } from "../base/math/point.js";
import { lineCrossing, planeThrough, shareOnArc } from "./brilliant-geometry.js";
import { CannotClose } from "./cannot-close.js";
import { type Polyhedron, PolyhedronDraft, stretchPolyhedron } from "./polyhedron.js";
import { heightsOf, type Proportions } from "./stone.js";

/** An outline with the places of its main facets. */
export interface BrilliantGirdle {
  /** Across, mm. */
  readonly width: number;
  /** Counter-clockwise, each from one main facet to the next. */
  readonly arcs: readonly Arc[];
  /** Direction of the outline where each arc begins; at a corner, of the main facet that stands there. */
  readonly tangents: readonly Point2[];
  /** Where the culet lies. */
  readonly centre: Point2;
  /** How often x is taken once all is drawn. */
  readonly stretch: number;
}

/** Shares of the way between the facets of a brilliant: the laboratories' default (diamondcut.gia.edu, charts). */
export const BRILLIANT_REACH = { star: 0.55, lowerHalf: 0.8 } as const;

/** What lies between a main facet and the next. */
interface Gap {
  /** Where the main facet before it touches the girdle. */
  readonly main: Point2;
  /** Where the tangents cross. */
  readonly peak: Point2;
  /** Share of the way from the centre to the peak at which the outline is crossed, and the chord between the mains. */
  readonly girdleShare: number;
  readonly chordShare: number;
  /** Where two halves meet on the girdle. */
  readonly half: Point2;
  readonly next: Point2;
  /** From the main to the half, and on to the next main. */
  readonly spans: readonly [Arc, Arc];
}

/** A corner of the girdle's two edges. */
interface GirdleCorner {
  readonly upper: number;
  readonly lower: number;
}

/** Height of the girdle left between two main facets, as a share of the width; chosen: 2 µm on a millimetre. */
const LEAST_VALLEY = 0.002;

/**
 * The facets of a brilliant.
 *
 * @param tolerance mm, of the girdle's outline
 * @throws CannotClose
 */
export function brilliant(girdle: BrilliantGirdle, proportions: Proportions, tolerance: number): Polyhedron {
  const gaps = girdle.arcs.map((_, i) => gapAfter(girdle, i));
  const draft = new PolyhedronDraft();
  const tips = gaps.map((gap) => tipsOf(girdle, gap, proportions));
  const corners = gaps.map((gap, i) => girdleCorners(draft, { girdle, gap, tips: tips[i], proportions, tolerance }));
  addCrown(draft, { girdle, gaps, proportions, corners, tips: tips.map(({ star }) => draft.point(star)) });
  addPavilion(draft, { girdle, gaps, proportions, corners, tips: tips.map(({ lower }) => draft.point(lower)) });
  const around = corners.flatMap(([before, after]) => [...before, ...after]);
  around.forEach((corner, i) => {
    const next = around[(i + 1) % around.length];
    draft.facet("girdle", [corner.lower, next.lower, next.upper, corner.upper]);
  });
  return stretchPolyhedron(draft, girdle.stretch);
}

function gapAfter({ arcs, tangents, centre }: BrilliantGirdle, i: number): Gap {
  const arc = arcs[i];
  const j = (i + 1) % arcs.length;
  const [main, next] = [segmentStart(arc), segmentStart(arcs[j])];
  const peak = lineCrossing(main, tangents[i], next, tangents[j]);
  const towards: Point2 = [peak[0] - centre[0], peak[1] - centre[1]];
  const girdleShare = shareOnArc(centre, towards, arc);
  const onChord = lineCrossing(centre, towards, main, [next[0] - main[0], next[1] - main[1]]);
  const chordShare = Math.hypot(onChord[0] - centre[0], onChord[1] - centre[1]) / Math.hypot(...towards);
  const half: Point2 = [centre[0] + girdleShare * towards[0], centre[1] + girdleShare * towards[1]];
  const angle = Math.atan2(half[1] - arc.centre[1], half[0] - arc.centre[0]);
  // Into the arc's own turn, which starts anywhere.
  const sweep = modulo(angle - arc.start, 2 * Math.PI);
  const spans: [Arc, Arc] = [
    { ...arc, sweep },
    { ...arc, start: arc.start + sweep, sweep: arc.sweep - sweep },
  ];
  return { main, peak, girdleShare, chordShare, half, next, spans };
}

function modulo(value: number, by: number): number {
  return value - by * Math.floor(value / by);
}

interface Tips {
  /** Where a star meets two bezels and two upper halves. */
  readonly star: Point3;
  /** Where two lower halves meet two mains. */
  readonly lower: Point3;
}

function tipsOf(girdle: BrilliantGirdle, gap: Gap, proportions: Proportions): Tips {
  const { table, culet, star = BRILLIANT_REACH.star, lowerHalf = BRILLIANT_REACH.lowerHalf } = proportions;
  const { crown, girdle: high, pavilion } = heightsOf({ width: girdle.width, proportions });
  const tableEdge = table * gap.chordShare;
  const starShare = tableEdge + star * (gap.girdleShare - tableEdge);
  if (starShare <= table) throw new CannotClose("the stars do not come down from the table");
  const lowerShare = gap.girdleShare * (1 - lowerHalf);
  if (lowerShare <= culet) throw new CannotClose("the lower halves reach into the culet");
  const at = (share: number, z: number): Point3 => [...between(girdle.centre, gap.peak, share), z];
  return {
    star: at(starShare, (crown * (1 - starShare)) / (1 - table)),
    lower: at(lowerShare, -high - (pavilion * (1 - lowerShare)) / (1 - culet)),
  };
}

function between([ax, ay]: Point2, [bx, by]: Point2, share: number): Point2 {
  return [ax + share * (bx - ax), ay + share * (by - ay)];
}

interface GapWork {
  readonly girdle: BrilliantGirdle;
  readonly gap: Gap;
  readonly tips: Tips;
  readonly proportions: Proportions;
  readonly tolerance: number;
}

/** Corners of both edges of the girdle along a gap: from the main up to the half, and from the half up to the next main. */
function girdleCorners(draft: PolyhedronDraft, work: GapWork): [GirdleCorner[], GirdleCorner[]] {
  const { girdle, gap, tips, proportions, tolerance } = work;
  const low = -proportions.girdle * girdle.width;
  const flat = ([x, y]: Point2, z: number): Point3 => [x, y, z];
  const ends: readonly [Point2, Point2][] = [
    [gap.main, gap.half],
    [gap.half, gap.next],
  ];
  const [before, after] = gap.spans.map((span, i) => {
    const [from, to] = ends[i];
    // Halves are planes, so they meet the girdle's wall in arches: lowest, and highest, in the middle of the arc.
    const upper = planeThrough(tips.star, flat(from, 0), flat(to, 0));
    const lower = planeThrough(tips.lower, flat(from, low), flat(to, low));
    const middle = divideSegment(span, 2)[0];
    requireValley(upper(middle) - lower(middle), -low, girdle.width);
    const count = chordCount(span.radius, span.sweep, tolerance / Math.max(girdle.stretch, 1));
    const inner = divideSegment(span, count).slice(0, -1);
    return [
      { upper: draft.point(flat(from, 0)), lower: draft.point(flat(from, low)) },
      ...inner.map((at) => ({ upper: draft.point(flat(at, upper(at))), lower: draft.point(flat(at, lower(at))) })),
    ];
  });
  return [before, after];
}

function requireValley(left: number, high: number, width: number): void {
  if (left >= LEAST_VALLEY * width) return;
  const least = (high - left) / width + LEAST_VALLEY;
  throw new CannotClose(`the halves take all of the girdle between them, which wants ${(100 * least).toFixed(1)} %`);
}

interface SideWork {
  readonly girdle: BrilliantGirdle;
  readonly gaps: readonly Gap[];
  readonly proportions: Proportions;
  readonly corners: readonly (readonly [readonly GirdleCorner[], readonly GirdleCorner[]])[];
  readonly tips: readonly number[];
}

function addCrown(draft: PolyhedronDraft, { girdle, gaps, proportions, corners, tips }: SideWork): void {
  const { crown } = heightsOf({ width: girdle.width, proportions });
  const table = gaps.map(({ main }) => draft.point([...between(girdle.centre, main, proportions.table), crown]));
  draft.facet("table", table);
  corners.forEach(([before, after], i) => {
    const j = (i + 1) % gaps.length;
    const start = before[0].upper;
    draft.facet("star", [table[i], tips[i], table[j]]);
    draft.facet("bezel", [table[i], tips[(i + gaps.length - 1) % gaps.length], start, tips[i]]);
    draft.facet("upper half", [tips[i], ...before.map(({ upper }) => upper), after[0].upper]);
    draft.facet("upper half", [tips[i], ...after.map(({ upper }) => upper), corners[j][0][0].upper]);
  });
}

function addPavilion(draft: PolyhedronDraft, { girdle, gaps, proportions, corners, tips }: SideWork): void {
  const { girdle: high, pavilion } = heightsOf({ width: girdle.width, proportions });
  const culetCorners = proportions.culet === 0 ? gaps.slice(0, 1) : gaps;
  const made = culetCorners.map(({ peak }) =>
    draft.point([...between(girdle.centre, peak, proportions.culet), -high - pavilion]),
  );
  const culet = gaps.map((_, i) => made[i % made.length]);
  const facet = (name: "culet" | "pavilion main" | "lower half", ring: readonly number[]) =>
    draft.facet(name, [...ring].reverse());
  facet("culet", made);
  corners.forEach(([before, after], i) => {
    const j = (i + 1) % gaps.length;
    const last = (i + gaps.length - 1) % gaps.length;
    facet("pavilion main", [culet[i], culet[last], tips[last], before[0].lower, tips[i]]);
    facet("lower half", [tips[i], ...before.map(({ lower }) => lower), after[0].lower]);
    facet("lower half", [tips[i], ...after.map(({ lower }) => lower), corners[j][0][0].lower]);
  });
}
