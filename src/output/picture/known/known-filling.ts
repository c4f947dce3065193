/**
 * The top of a plain zone that is filled up to the rails: level across, whatever the floor beneath does. It faces along the
 * radius, and where the rails fall towards the back as much along the band as they do.
 */
import type { BandSurface } from "../../../band/surface/surface.js";
import { extent } from "../../../base/math/extent.js";
import type { Point3 } from "../../../base/math/point.js";
import { TURN } from "../../../base/units.js";
import type { Pattern } from "../../../pattern/laid-out.js";
import { type KnownSurface, mostLean, reachOf } from "./known-surface.js";

/** Angles at which the top of a band that tapers is looked up: between two of them it changes by less than a µm. */
const ROWS = 1440;

const STEP = TURN / ROWS;

/** The top at some angle: its radius, and from w to w, mm. */
interface Row {
  readonly radius: number;
  readonly low: number;
  readonly high: number;
}

/** @param tolerance by how much the mesh's chords stand off, mm */
export function knownFilling({ bodies }: Pattern, wrap: BandSurface, tolerance: number): KnownSurface {
  const filling = bodies.find((body) => body.filling === true);
  if (filling === undefined) return () => {};
  const points = filling.outline.flat(2);
  const [from, to] = extent(points.map(([u]) => u));
  const rowOf = rowsOf(points, wrap);
  const back = rowOf(wrap.angleAt((from + to) / 2));
  const reach = reachOf(tolerance);
  const lean = mostLean([back.radius, Number.POSITIVE_INFINITY], tolerance);
  return (x, y, z, found) => {
    const r = Math.sqrt(x * x + y * y);
    const angle = Math.atan2(y, x);
    const u = wrap.uAt(angle);
    const along = u + wrap.round * Math.ceil((from - reach - u) / wrap.round);
    if (along > to + reach) return;
    const { radius, low, high } = rowOf(angle);
    if (Math.abs(r - radius) > reach || z < low || z > high) return;
    const fall = wrap.revolved ? 0 : (rowOf(angle - STEP).radius - rowOf(angle + STEP).radius) / (2 * STEP * r);
    const scale = 1 / Math.sqrt(1 + fall * fall) / r;
    found((x - fall * y) * scale, (y + fall * x) * scale, 0, lean);
  };
}

/** Looks the top up by its corners along one edge and the other; beyond its ends it is as it is there. */
function rowsOf(points: readonly Point3[], wrap: BandSurface): (angle: number) => Row {
  const [from, to] = extent(points.map(([u]) => u));
  const [low, high] = [-1, 1].map((side) => edgeAlong(points, side));
  const rows = new Map<number, Row>();
  const make = (angle: number): Row => {
    const turned = wrap.uAt(angle);
    const middle = (from + to) / 2;
    const along = turned - wrap.round * Math.round((turned - middle) / wrap.round);
    const u = Math.min(to, Math.max(from, along));
    const line = wrap.lineAt(wrap.angleAt(u));
    const [[lowV, h], [highV]] = [low(u), high(u)];
    const [w, r] = line.point(lowV, 0);
    return { radius: r + h / line.normal(lowV)[1], low: w, high: line.point(highV, 0)[0] };
  };
  return (angle) => {
    const at = wrap.revolved ? 0 : Math.round(angle / STEP);
    const row = rows.get(at) ?? make(at * STEP);
    rows.set(at, row);
    return row;
  };
}

/** v and height along the edge at low v (−1) or high v (1), straight between its corners. */
function edgeAlong(points: readonly Point3[], side: number): (u: number) => readonly [v: number, height: number] {
  const outermost = new Map<number, Point3>();
  for (const point of points) {
    const other = outermost.get(point[0]);
    if (other === undefined || side * point[1] > side * other[1]) outermost.set(point[0], point);
  }
  const edge = [...outermost.values()].sort(([a], [b]) => a - b);
  return (u) => {
    const found = edge.findIndex(([at]) => at >= u);
    const next = found === -1 ? edge.length - 1 : Math.max(1, found);
    const [[a, av, ah], [b, bv, bh]] = [edge[next - 1], edge[next]];
    const share = (u - a) / (b - a);
    return [av + share * (bv - av), ah + share * (bh - ah)];
  };
}
