/**
 * Ribbons whose width changes along their line: at each place they reach half their width there to either side, square
 * to the line. Corners are arcs about the line's vertices.
 *
 * The width is given over the line as drawn, its pieces joined; symmetry's images carry it with them.
 */
import { chordCount } from "../../base/math/curve.js";
import { TURN } from "../../base/units.js";
import type { RibbonSpec } from "../../design/pattern/ribbon.js";
import type { Chain } from "../../flat/chains.js";
import type { GridPath, GridPoint } from "../../flat/grid.js";
import { type Ends, type GridRegion, ringArea, unite } from "../../flat/polygons.js";

/** The width over the share of the line, from 0 to 1: [share, mm], shares rising from 0. */
export type Taper = readonly (readonly [share: number, width: number])[];

/** How an end is made: as the ribbon's free ends are, or as a corner towards the next point of what it joins. */
export type TaperEnd = Ends | { readonly next: GridPoint };

export interface TaperOptions {
  readonly taper: Taper;
  /** Whether the taper is run through to half way and back again. */
  readonly returns: boolean;
  /** Of an open line. */
  readonly ends: readonly [start: TaperEnd, end: TaperEnd];
  /** Grid steps in a millimetre. */
  readonly scale: number;
  /** Grid steps between a round corner and its chords. */
  readonly arcTolerance: number;
}

/** The ribbon's widths; undefined where it has one. */
export function taperOf({ width, to, widths }: Pick<RibbonSpec, "width" | "to" | "widths">): Taper | undefined {
  if (to !== undefined)
    return [
      [0, width],
      [1, to],
    ];
  return widths === undefined ? undefined : [[0, width], ...widths];
}

/** Largest width, mm. */
export function widestOf(ribbon: Pick<RibbonSpec, "width" | "to" | "widths">): number {
  return Math.max(ribbon.width, ribbon.to ?? 0, ...(ribbon.widths ?? []).map(([, width]) => width));
}

/** The ribbon along a line. */
export function taperedRibbon({ points, closed }: Chain, options: TaperOptions): GridRegion {
  const { ends, arcTolerance } = options;
  const stations = withStops(closed ? [...points, points[0]] : points, options);
  const last = stations.length - 1;
  const pieces = stations.slice(1).map((station, i) => stretch(stations[i], station));
  for (let i = 1; i < last; i++) pieces.push(wedge(stations[i - 1], stations[i], stations[i + 1], arcTolerance));
  if (closed) pieces.push(wedge(stations[last - 1], stations[0], stations[1], arcTolerance));
  else {
    pieces.push(cap(stations[0], stations[1], ends[0], arcTolerance));
    pieces.push(cap(stations[last], stations[last - 1], ends[1], arcTolerance));
  }
  return unite(pieces.map((ring) => (ring.length > 2 && ringArea(ring) < 0 ? ring.reverse() : ring)));
}

/** A vertex and half the width there, grid steps. */
interface Station extends GridPoint {
  readonly half: number;
}

/** The line's vertices, and the places between them at which the width begins to change otherwise. */
function withStops(path: GridPath, { taper, returns, scale }: TaperOptions): Station[] {
  const stops = taper.map(([share]) => share);
  const shares = returns ? [...stops.map((share) => share / 2), 0.5, ...stops.map((share) => 1 - share / 2)] : stops;
  shares.sort((a, b) => a - b);
  const halfAt = (share: number) => (widthAt(taper, returns ? 1 - Math.abs(1 - 2 * share) : share) * scale) / 2;
  const lengths = path.slice(1).map((point, i) => Math.hypot(point.x - path[i].x, point.y - path[i].y));
  const total = lengths.reduce((sum, length) => sum + length, 0);
  const stations: Station[] = [{ ...path[0], half: halfAt(0) }];
  let walked = 0;
  lengths.forEach((length, i) => {
    const [a, b] = [path[i], path[i + 1]];
    for (const share of shares) {
      const t = (share * total - walked) / length;
      // A stop nearer than a step to a vertex is that vertex.
      if (t * length < 1 || (1 - t) * length < 1) continue;
      const place = { x: Math.round(a.x + t * (b.x - a.x)), y: Math.round(a.y + t * (b.y - a.y)) };
      stations.push({ ...place, half: halfAt(share) });
    }
    walked += length;
    stations.push({ ...b, half: halfAt(i + 1 === lengths.length ? 1 : walked / total) });
  });
  return stations;
}

function widthAt(taper: Taper, share: number): number {
  const next = taper.findIndex(([at]) => at > share);
  if (next === -1) return taper[taper.length - 1][1];
  const [[s0, w0], [s1, w1]] = [taper[next - 1], taper[next]];
  return w0 + ((w1 - w0) * (share - s0)) / (s1 - s0);
}

/** The point `along` and `aside` (to the left) of a station, in half widths, on the way from one point to another. */
function beside(station: Station, from: GridPoint, to: GridPoint, along: number, aside: number): GridPoint {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [tx, ty] = [((to.x - from.x) / length) * station.half, ((to.y - from.y) / length) * station.half];
  return {
    x: Math.round(station.x + along * tx - aside * ty),
    y: Math.round(station.y + along * ty + aside * tx),
  };
}

/** Between two stations. Their own points are vertices, so that what is put beside it meets it without a crack. */
function stretch(a: Station, b: Station): GridPath {
  const side = (station: Station, aside: number) => beside(station, a, b, 0, aside);
  return [side(a, 1), { x: a.x, y: a.y }, side(a, -1), side(b, -1), { x: b.x, y: b.y }, side(b, 1)];
}

/** The outer side of the corner between two spans. */
function wedge(before: GridPoint, at: Station, after: GridPoint, arcTolerance: number): GridPath {
  const [ax, ay, bx, by] = [at.x - before.x, at.y - before.y, after.x - at.x, after.y - at.y];
  const turn = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  const aside = turn > 0 ? -1 : 1;
  const arc = about(at, Math.atan2(ay, ax) + (aside * TURN) / 4, turn, arcTolerance);
  return [{ x: at.x, y: at.y }, beside(at, before, at, 0, aside), ...arc, beside(at, at, after, 0, aside)];
}

/** Points inside the arc about a station, from an angle on, without its ends. */
function about({ x, y, half }: Station, start: number, sweep: number, arcTolerance: number): GridPath {
  if (half === 0) return [];
  const count = chordCount(half, sweep, arcTolerance);
  return Array.from({ length: count - 1 }, (_, i) => {
    const angle = start + (sweep * (i + 1)) / count;
    return { x: Math.round(x + half * Math.cos(angle)), y: Math.round(y + half * Math.sin(angle)) };
  });
}

/** What stands beyond an end; `inner` is the station next to it. */
function cap(end: Station, inner: Station, form: TaperEnd, arcTolerance: number): GridPath {
  if (form === "butt") return [];
  if (typeof form !== "string") return wedge(inner, end, form.next, arcTolerance);
  const side = (along: number, aside: number) => beside(end, inner, end, along, aside);
  const [left, right] = [side(0, 1), side(0, -1)];
  if (form === "square") return [{ x: end.x, y: end.y }, right, side(1, -1), side(1, 1), left];
  const start = Math.atan2(end.y - inner.y, end.x - inner.x) - TURN / 4;
  return [{ x: end.x, y: end.y }, right, ...about(end, start, TURN / 2, arcTolerance), left];
}
