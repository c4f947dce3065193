/**
 * The outline of a body, or of one of the regions in it, as lines on the ring wherever it comes round the band.
 */
import type { BandSurface } from "../../band/surface/surface.js";
import type { Point2, Point3 } from "../../base/math/point.js";
import { fromGrid, gridFor, toGrid } from "../../flat/grid.js";
import { intersect } from "../../flat/polygons.js";
import type { BodyMember, FlatBody, ReliefPolygon } from "../../relief/flat-body.js";
import { type FlatRings, tileOutlines } from "../../relief/tile-outlines.js";
import { heightIndexOf, heightsAt } from "../proof/intent.js";
import { isWithin } from "./band-paths.js";
import { periodOf, regionPath } from "./body-regions.js";
import type { PartSource } from "./members.js";

/** How far lines stand off the metal, mm: above what facets leave, below what is seen from the side. Chosen. */
export const LIFT = 0.02;

/** The longest segment along the band, mm: its chord lies 1 µm off on a ring of 20 mm. */
const LONGEST = 0.3;

/** A line, mm: of a closed one the last point is joined to the first. */
export interface Line<Point> {
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/** The surface that carries a body, and how high above it its edge is drawn over (u, v), mm. */
interface Carried {
  readonly wrap: BandSurface;
  readonly heightAt: (u: number, v: number) => number;
}

/** Outlines of all regions that a place in the document means. */
export function regionLines(source: PartSource, path: string): Line<Point3>[] {
  return source.pattern.bodies.flatMap((body, at) => {
    const meant = (body.members ?? []).filter((member) => isWithin(path, member.path));
    if (meant.length === 0 && (body.members !== undefined || !isWithin(path, regionPath(body.path)))) return [];
    return bodyLines(body, meant, { wrap: source.wrap, heightAt: heightsOver(source, at) });
  });
}

/** Height of a body's edge, mm: of what is cut at the surface. */
export function topOf({ mode, outline }: FlatBody): number {
  const heights = outline.flat(2).map(([, , h]) => h);
  return mode === "raised" && heights.length > 0 ? heights.reduce((least, h) => Math.min(least, h)) : 0;
}

/** The height at which a body's edge is drawn over a place: of what is cut the top of what it is cut into. */
function heightsOver({ pattern, wrap }: PartSource, at: number): (u: number, v: number) => number {
  const body = pattern.bodies[at];
  const top = topOf(body);
  const looked = body.mode === "raised" ? [body] : pattern.bodies.slice(0, at).filter(({ mode }) => mode === "raised");
  // A level edge needs no looking up.
  if (body.mode === "raised" && body.rise === undefined && body.fade === undefined) return () => top;
  const known = looked.map((one) => ({ one, index: heightIndexOf(one), period: periodOf(one, wrap) }));
  return (u, v) => {
    const heights = known.map(({ one, index, period }) => heightsAt(index, period, u, v, one)?.high ?? top);
    return heights.reduce((most, height) => Math.max(most, height), top);
  };
}

/** A body's outline wherever it comes round the band; of some of its members theirs, as far as they lie in it. */
export function bodyLines(body: FlatBody, members: readonly BodyMember[], { wrap, heightAt }: Carried): Line<Point3>[] {
  const { width, count } = stretchOf(body, wrap);
  const own = unrolled(body, body.outline, { wrap, width });
  const rings =
    members.length === 0
      ? own
      : members.flatMap(({ outline }) => bothOf(own, unrolled(body, [outline], { wrap, width }), width));
  const lines = rings.flatMap((ring) => withoutEnds(ring, width));
  return Array.from({ length: count }, (_, i) => i * width).flatMap((by) =>
    lines.map(({ points, closed }) => {
      const moved = points.map(([u, v]): Point2 => [u + by, v]);
      const bent = refined(moved, closed).map(([u, v]) => wrap.forward(u, v, heightAt(u, v) + LIFT));
      return { points: bent, closed };
    }),
  );
}

/** What is worked of the band laid flat, mm, and how often it comes round: one period where these make the whole. */
function stretchOf(body: FlatBody, wrap: BandSurface): { readonly width: number; readonly count: number } {
  const period = periodOf(body, wrap);
  const count = Math.max(1, Math.round(wrap.round / period));
  return Math.abs(count * period - wrap.round) < ON_END ? { width: period, count } : { width: wrap.round, count: 1 };
}

interface Stretch {
  readonly wrap: BandSurface;
  readonly width: number;
}

function unrolled(body: FlatBody, outline: readonly ReliefPolygon[], { wrap, width }: Stretch): FlatRings {
  const { seam } = body;
  const shape = { outline, seam, period: seam === undefined ? periodOf(body, wrap) : undefined };
  const farthest = outline.flat(2).reduce((most, [, v]) => Math.max(most, Math.abs(v)), 0);
  const seatLength = Math.max(wrap.seatLength, 2 * farthest);
  return tileOutlines(shape, { tileWidth: width, seatLength, tiles: 1, origin: [0, 0] });
}

/** What lies in both. */
function bothOf(one: FlatRings, other: FlatRings, width: number): FlatRings {
  const grid = gridFor(width);
  const [a, b] = [one, other].map((rings) => rings.map((ring) => toGrid(grid, ring)));
  return intersect(a, b).map((ring) => fromGrid(grid, ring));
}

/** Outlines are cut where what is worked begins and ends: there they go on, so nothing is drawn. */
function withoutEnds(ring: readonly Point2[], width: number): Line<Point2>[] {
  const isEnd = (u: number) => Math.abs(u) < ON_END || Math.abs(u - width) < ON_END;
  const cut = ring.map(([u], i) => isEnd(u) && Math.abs(ring[(i + 1) % ring.length][0] - u) < ON_END);
  const first = cut.indexOf(true);
  if (first === -1) return [{ points: ring, closed: true }];
  const lines: Point2[][] = [];
  let line: Point2[] = [];
  for (let i = 1; i <= ring.length; i++) {
    const at = (first + i) % ring.length;
    line.push(ring[at]);
    if (!cut[at]) continue;
    if (line.length > 1) lines.push(line);
    line = [];
  }
  return lines.map((points) => ({ points, closed: false }));
}

/** A place this near to where the stretch begins or ends lies there, mm: a grid step. */
const ON_END = 1e-4;

/** The line with points enough to follow the band round. */
function refined(points: readonly Point2[], closed: boolean): Point2[] {
  return points.flatMap(([u, v], i): Point2[] => {
    const next = points[(i + 1) % points.length];
    if (!closed && i === points.length - 1) return [[u, v]];
    const parts = Math.max(1, Math.ceil(Math.abs(next[0] - u) / LONGEST));
    return Array.from({ length: parts }, (_, part): Point2 => {
      return [u + ((next[0] - u) * part) / parts, v + ((next[1] - v) * part) / parts];
    });
  });
}
