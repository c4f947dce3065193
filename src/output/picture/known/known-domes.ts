/**
 * Curved sections of relief: domes, ridges, rounded edges. How steep they are follows from the distance inside the outline,
 * and which way from the outline.
 */
import type { BandSurface } from "../../../band/surface/surface.js";
import type { Point2, Point3 } from "../../../base/math/point.js";
import type { Pattern } from "../../../pattern/laid-out.js";
import type { FlatBody } from "../../../relief/flat-body.js";
import { SideGrid, sidesOf } from "./inset.js";
import { type KnownSurface, reachOf } from "./known-surface.js";
import { type Chord, chordsOf } from "./slope.js";

/** Sections of fewer levels are flat, bevelled or upright. */
const LEAST_LEVELS = 4;

/** Points of a contour by which its distance from the outline is told. */
const ASKED = 40;

/** Facets may lean by this share of what a section turns in one chord, and by this much beside, radians. Chosen. */
const ALLOWED = 0.75;
const SPARE = 0.12;

/** A body's curved surface. */
interface Dome {
  readonly grid: SideGrid;
  readonly chords: readonly Chord[];
  /** 1 where it rises inwards, −1 where it is sunk. */
  readonly sign: 1 | -1;
  /** u from and to, and after how many mm it comes again; 0 where it stands once. */
  readonly low: number;
  readonly high: number;
  readonly period: number;
}

/** @param tolerance by how much the mesh's chords stand off, mm */
export function knownDomes(pattern: Pattern, wrap: BandSurface, tolerance: number): KnownSurface {
  const domes = pattern.bodies.flatMap(domeOf);
  const reach = 2 * reachOf(tolerance);
  return (x, y, z, found) => {
    if (domes.length === 0) return;
    const [u, v, h] = wrap.inverse(x, y, z);
    for (const dome of domes) {
      const inset = placesOf(dome, u, wrap.round).flatMap((at) => dome.grid.insetAt(at, v) ?? [])[0];
      const chord = inset && dome.chords.find(({ to }) => inset.distance <= to);
      if (chord === undefined) continue;
      const share = Math.max(0, (inset.distance - chord.from) / (chord.to - chord.from));
      const height = chord.heights[0] + share * (chord.heights[1] - chord.heights[0]);
      const steep = chord.steepness[0] + share * (chord.steepness[1] - chord.steepness[0]);
      if (Math.abs(dome.sign * h - height) * Math.cos(steep) > reach) continue;
      const slope = -dome.sign * Math.tan(steep);
      const [nx, ny, nz] = bent(wrap, [u, v, h], [slope * inset.way[0], slope * inset.way[1]]);
      found(nx, ny, nz, ALLOWED * Math.abs(chord.steepness[0] - chord.steepness[1]) + SPARE);
    }
  };
}

/** The normal in space of what is so steep along and across the flat pattern. */
function bent(wrap: BandSurface, [u, v, h]: Point3, [alongU, alongV]: Point2): Point3 {
  const { along, across } = wrap.stretchAt(u, v, h);
  const outward = wrap.normal(u, v);
  const angle = wrap.angleAt(u);
  const round: Point3 = [-Math.sin(angle), Math.cos(angle), 0];
  // Across is square to both: outward × round.
  const side = [0, 1, 2].map(
    (k) => outward[(k + 1) % 3] * round[(k + 2) % 3] - outward[(k + 2) % 3] * round[(k + 1) % 3],
  );
  const [p, q] = [alongU / along, alongV / across];
  const normal = [0, 1, 2].map((k) => outward[k] + p * round[k] + q * side[k]);
  const length = Math.hypot(...normal);
  return [normal[0] / length, normal[1] / length, normal[2] / length];
}

function domeOf(body: FlatBody): Dome[] {
  const { mode, top, outline, seam, rise, fade, surface } = body;
  if (mode === "pierced" || rise !== undefined || fade !== undefined || surface !== undefined) return [];
  const levels = new Map<number, Point3[]>();
  for (const point of top.flat(2)) {
    const there = levels.get(point[2]);
    if (there === undefined) levels.set(point[2], [point]);
    else there.push(point);
  }
  if (levels.size < LEAST_LEVELS) return [];
  const period = seam === undefined ? (body.period ?? 0) : seam[1] - seam[0];
  const isCut = (a: Point2, b: Point2) =>
    seam?.some((u) => Math.abs(a[0] - u) < CUT && Math.abs(b[0] - u) < CUT) === true;
  const sides = outline
    .flat()
    .flatMap((ring) => sidesOf(ring.map(([u, v]): Point2 => [u, v])))
    .filter(({ from, to }) => !isCut(from, to))
    .flatMap((side) => (seam === undefined ? [side] : [-period, 0, period].map((shift) => shifted(side, shift))));
  const us = outline.flat(2).map(([u]) => u);
  const [low, high] = [us.reduce((a, b) => Math.min(a, b)), us.reduce((a, b) => Math.max(a, b))];
  const farthest = Math.max(high - low, ...outline.flat(2).map(([, v]) => Math.abs(v)));
  const wide = new SideGrid(sides, farthest);
  const knots = [...levels].map(([h, points]): [number, number] => [insetOf(points, wide), h]);
  knots.sort(([a], [b]) => a - b);
  const last = knots[knots.length - 1][0];
  return [
    {
      grid: new SideGrid(sides, last + CUT),
      chords: chordsOf(knots),
      sign: mode === "sunk" ? -1 : 1,
      low,
      high,
      period,
    },
  ];
}

/** Cut at a seam within this, mm. */
const CUT = 1e-6;

function shifted(side: ReturnType<typeof sidesOf>[number], shift: number) {
  const { from, to } = side;
  return { ...side, from: [from[0] + shift, from[1]] as Point2, to: [to[0] + shift, to[1]] as Point2 };
}

/** The median distance of a contour's points from the outline. */
function insetOf(points: readonly Point3[], grid: SideGrid): number {
  const step = Math.max(1, Math.floor(points.length / ASKED));
  const distances = points
    .filter((_, i) => i % step === 0)
    .flatMap(([u, v]) => grid.insetAt(u, v)?.distance ?? [])
    .sort((a, b) => a - b);
  return distances[distances.length >> 1] ?? 0;
}

/** u within a body's own span that stand for u on the ring. */
function placesOf({ low, high, period }: Dome, u: number, round: number): number[] {
  const step = period > 0 ? period : round;
  const first = u - step * Math.floor((u - low) / step + CUT);
  return [first, first - step].filter((at) => at >= low - CUT && at <= high + CUT);
}
