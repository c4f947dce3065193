/**
 * Columns: straight lines that stand on the band, on which what was drawn and what was built are compared.
 *
 * On the seat a column stands along its normal, elsewhere along the radius. Columns on the seat scan one unit of the pattern
 * in lines across the band, evenly and each line shifted by the golden ratio, and each next column is that of another unit,
 * so that all of them together sample one unit finely and every unit a little.
 */
import type { Band } from "../../band/band.js";
import type { BandSurface, SurfaceLine } from "../../band/surface/surface.js";
import type { Point2 } from "../../base/math/point.js";
import { TURN } from "../../base/units.js";
import { type Intervals, intersect } from "./intervals.js";

/** A place where a column stands. */
export interface Place {
  /** On the seat, or on the rest of the outside: rails and rounded edges. */
  readonly on: "seat" | "rest";
  /** θ, radians, 0 to a whole turn, and u of the same, mm. */
  readonly angle: number;
  readonly u: number;
  /** On the seat v, mm; elsewhere w. */
  readonly across: number;
  readonly section: Section;
}

/** The band at some angle. */
export interface Section {
  readonly line: SurfaceLine;
  readonly polyline: readonly Point2[];
}

/** The line of a column, in (w, r), mm. */
export interface Stand {
  readonly point: Point2;
  readonly way: Point2;
  /** By how much longer than flat across the band a short line is on the seat, and that for each mm farther out. */
  readonly scale: number;
  readonly spread: number;
  /** What the bare band holds of it, mm from the point. */
  readonly band: Intervals;
}

/** A step by which slopes along the seat are taken, mm: lines and arcs have the same slope over it. */
const STEP = 1e-3;

/** A column far out of the band begins with this radius, mm. */
const LEAST_RADIUS = 1;

export function columnAt({ on, across, section: { line, polyline } }: Omit<Place, "angle" | "u">): Stand {
  if (on === "rest") {
    const point: Point2 = [across, LEAST_RADIUS];
    return { point, way: [0, 1], scale: 1, spread: 0, band: sectionCrossings(polyline, point, [0, 1]) };
  }
  const point = line.point(across, 0);
  const way = line.normal(across);
  const [before, after] = [across - STEP, across + STEP];
  const [[aw, ar], [bw, br]] = [line.point(before, 0), line.point(after, 0)];
  const [[nw, nr], [mw, mr]] = [line.normal(before), line.normal(after)];
  const scale = Math.hypot(bw - aw, br - ar) / (2 * STEP);
  const spread = ((mw - nw) * way[1] - (mr - nr) * way[0]) / (2 * STEP);
  const inward: Intervals = [LEAST_RADIUS - point[1], Number.MAX_VALUE];
  return { point, way, scale, spread, band: intersect(sectionCrossings(polyline, point, way), inward) };
}

/** What of a straight line lies in a polygon. */
export function sectionCrossings(polyline: readonly Point2[], [pw, pr]: Point2, [dw, dr]: Point2): Intervals {
  const found: number[] = [];
  let [aw, ar] = polyline[polyline.length - 1];
  let a = (aw - pw) * dr - (ar - pr) * dw;
  for (const [bw, br] of polyline) {
    const b = (bw - pw) * dr - (br - pr) * dw;
    if (a > 0 !== b > 0) {
      const share = a / (a - b);
      found.push((aw + share * (bw - aw) - pw) * dw + (ar + share * (br - ar) - pr) * dr);
    }
    [aw, ar, a] = [bw, br, b];
  }
  return found.sort((one, other) => one - other);
}

/** The place so many mm farther along and across. */
export function placeBeside(place: Place, { point, band }: Stand, along: number, across: number): Place {
  const radius = place.on === "rest" ? (band[band.length - 1] ?? 0) : 0;
  const angle = place.angle + along / Math.max(point[1], point[1] + radius);
  return { ...place, angle: (angle + TURN) % TURN, u: place.u + along, across: place.across + across };
}

/** So many columns stand on the seat and elsewhere, in lines across and places along. */
export interface Density {
  readonly lines: number;
  readonly along: number;
}

export interface PlacesOptions {
  readonly band: Band;
  readonly wrap: BandSurface;
  /** Equal units of the pattern round the band. */
  readonly units: number;
  readonly density: Density;
}

/** Of successive multiples of it no two fall together: they divide a whole evenly however many there are. */
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** The same of two ways at once, with a line's own shift along (M. Roberts, The Unreasonable Effectiveness of Quasirandom Sequences). */
const PLASTIC = 0.7548776662466927;

/** The first line across is shifted too, so that no column stands on a mirror, where the mesh has edges (chosen). */
const ASIDE = 0.37;

/**
 * Lines across whose columns stand at different angles: others share theirs, so that fewer triangles lie over an angle at
 * which something stands (chosen: half the time of a comparison, and still seven angles to each of thirty tiles).
 */
const KINDS = 8;

/** Angles at which columns stand where the section changes: as many sections are worked out. */
const TAPERED_ANGLES = 60;

/** Groups of columns of which each alone tells a sum over all, if less finely. */
export const GROUPS = 16;

/** Of columns side by side in one line, and of lines side by side, none are in the same group: it has no factor in common with them. */
const NEXT_LINE = 7;

/** A column with its share of the whole. */
export interface Column {
  /** Which of `GROUPS` it is in: each samples the whole round, none has columns side by side. */
  readonly group: number;
  readonly place: Place;
  readonly stand: Stand;
  /** Of the turn, radians, times what it stands for across the band, mm. */
  readonly weight: number;
}

/** The columns of a band. */
export function columnsOf({ band, wrap, units, density }: PlacesOptions): Column[] {
  const { seat, outside } = { seat: density.lines, outside: Math.ceil(density.lines / 3) };
  const angles = band.revolved
    ? [0]
    : Array.from({ length: TAPERED_ANGLES }, (_, i) => TURN * ((i * GOLDEN + ASIDE) % 1));
  const per = band.revolved ? density.along : Math.ceil((seat * density.along) / TAPERED_ANGLES);
  let count = 0;
  return angles.flatMap((angle, turn) => {
    const { polyline } = band.sectionAt(angle);
    const section = { line: wrap.lineAt(angle), polyline };
    const lines = (on: Place["on"], spans: readonly Point2[], count: number) =>
      spread(spans, count, turn).map(({ at, share }) => ({
        on,
        share,
        stands: at.map((across) => ({ across, stand: columnAt({ on, across, section }) })),
      }));
    const all = band.revolved
      ? [...lines("seat", [seatSpan(section)], seat), ...lines("rest", restSpans(section), outside)]
      : [...lines("seat", [seatSpan(section)], per), ...lines("rest", restSpans(section), Math.ceil(per / 4))];
    return all.flatMap(({ on, share, stands }, j): Column[] => {
      const column = (turned: number, k: number, part: number): Column => {
        const u = wrap.round * turned;
        const around = wrap.angleAt(u) % TURN;
        const { across, stand } = stands[Math.floor(stands.length * ((k * GOLDEN + j * PLASTIC) % 1))];
        const place = { on, u, angle: around < 0 ? around + TURN : around, across, section };
        const group = band.revolved ? (count++ + NEXT_LINE * j) % GROUPS : ofTurn(turn);
        return { place, stand, group, weight: share * part * TURN };
      };
      if (!band.revolved) return [column(wrap.uAt(angle) / wrap.round, turn, 1 / angles.length)];
      const kind = j % KINDS;
      const stride = strideOf(units);
      const every = on === "seat" ? 1 : 2;
      return Array.from({ length: Math.ceil(density.along / every) }, (_, i) => {
        const k = i * every;
        const inUnit = (k + ((kind * GOLDEN + ASIDE) % 1)) / density.along;
        const unit = (k * stride + kind) % units;
        return column((unit + inUnit) / units, i, every / density.along);
      });
    });
  });
}

/** Angles that follow each other lie all round, so a few of them are a group: all columns at one angle stand or fall together. */
function ofTurn(turn: number): number {
  return Math.floor((turn * GROUPS) / TAPERED_ANGLES);
}

/** A step near the golden section of a number that has no factor in common with it: by it all units are come by. */
function strideOf(units: number): number {
  const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));
  let stride = Math.max(1, Math.round(units * GOLDEN));
  while (common(stride, units) !== 1) stride++;
  return stride;
}

function seatSpan({ line: { reach } }: Section): Point2 {
  return [-reach, reach];
}

/** From w to w of what of the outside lies beside the seat. */
function restSpans({ line, polyline }: Section): Point2[] {
  const [low, high] = [line.point(-line.reach, 0)[0], line.point(line.reach, 0)[0]];
  const ws = polyline.map(([w]) => w);
  const [first, last] = [ws.reduce((a, b) => Math.min(a, b)), ws.reduce((a, b) => Math.max(a, b))];
  return (
    [
      [first, low],
      [high, last],
    ] as const
  ).filter(([a, b]) => b - a > STEP);
}

/** Places on each line across: as many columns' stands are worked out (chosen). */
const ON_A_LINE = 2;

/**
 * Lines over several spans as one, each with what it stands for and its places. Where in their parts these stand changes from
 * line to line and from turn to turn: at even places all might fall on the joints of brickwork, or none.
 */
function spread(spans: readonly Point2[], count: number, turn: number): { at: number[]; share: number }[] {
  const total = spans.reduce((sum, [a, b]) => sum + b - a, 0);
  if (total === 0) return [];
  const [[a, b], other] = spans;
  return Array.from({ length: count }, (_, i) => {
    const at = Array.from({ length: ON_A_LINE }, (__, k) => {
      const shift = (0.5 + turn * GOLDEN + (i * ON_A_LINE + k) * PLASTIC) % 1;
      const along = (total * (i + (k + shift) / ON_A_LINE)) / count;
      return along <= b - a || other === undefined ? a + along : other[0] + along - (b - a);
    });
    return { at, share: total / count };
  });
}
