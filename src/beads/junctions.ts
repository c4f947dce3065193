/**
 * Junctions: where bead lines cross, touch or end on one another, so that one bead can serve both.
 *
 * Lines stand in one tile and come again in every other; each is compared with all copies that come near it.
 */
import type { Point2 } from "../base/math/point.js";
import type { RunLine } from "../flat/runs.js";
import { isCyclic, verticesOf, type Walk, walkLine } from "../flat/walk-line.js";

/** A bead line among those that may meet. */
export interface MeetingLine {
  readonly line: RunLine;
  /** Smallest diameter of its beads, mm. */
  readonly diameter: number;
  /** mm above the seat of the beads' centres. */
  readonly level: number;
  /** Whether it may be parted where it meets others. */
  readonly shares: boolean;
}

/** Lines, or levels, that come this near meet, as a share of the smaller diameter: their beads there are one. */
const REACH = 0.05;

/** Contacts along a line nearer than this share of the smaller diameter are one junction. */
const ONE_JUNCTION = 0.5;

/** Lines that keep together for more than this many smaller diameters run along each other and do not meet. */
const TOGETHER = 2;

/** Contacts this near to the nearest are as near, mm: rounding. */
const SAME_DISTANCE = 1e-6;

/**
 * The places at which each line that shares must carry a bead: index of a side and share of it, rising.
 *
 * Two lines that both share meet where they cross or touch; the ends of any line meet a line that shares.
 *
 * @param period mm along the band after which all lines come again
 */
export function findJunctions(lines: readonly MeetingLine[], period: number): number[][] {
  const laid = lines.map((one): LaidLine => {
    const walk = walkLine(one.line);
    return { ...one, walk, box: boxOf(verticesOf(one.line)) };
  });
  const found: number[][] = lines.map(() => []);
  for (let i = 0; i < laid.length; i++) {
    for (let j = i; j < laid.length; j++) {
      const [a, b] = [laid[i], laid[j]];
      const endsOnly = !(a.shares && b.shares);
      if (!a.shares && !b.shares) continue;
      const least = Math.min(a.diameter, b.diameter);
      if (Math.abs(a.level - b.level) > REACH * least) continue;
      const reach = REACH * least;
      const [first, last] = copiesNear(a.box, b.box, period, reach);
      const contacts: Contact[] = [];
      for (let copy = i === j ? 0 : first; copy <= last; copy++) {
        contacts.push(...contactsOf(a, b, { shift: copy * period, reach, least, endsOnly, self: i === j, copy }));
      }
      for (const { onA, onB } of gather(contacts, least)) {
        if (a.shares) found[i].push(onA);
        if (b.shares) found[j].push(onB);
      }
    }
  }
  return laid.map(({ walk, line, diameter }, i) => distinct(found[i], walk, isCyclic(line), 2 * REACH * diameter));
}

interface LaidLine extends MeetingLine {
  readonly walk: Walk;
  readonly box: Box;
}

interface Box {
  readonly low: Point2;
  readonly high: Point2;
}

interface Meeting {
  /** By how much the second line is moved along the band, mm, and that as a number of periods. */
  readonly shift: number;
  readonly copy: number;
  readonly reach: number;
  /** Smaller diameter, mm. */
  readonly least: number;
  /** Whether only ends of one on the other count. */
  readonly endsOnly: boolean;
  /** Whether the second line is a copy of the first. */
  readonly self: boolean;
}

/**
 * Arc lengths on both lines at a place where they come near, and how far apart they are there, mm. On a strand the length
 * goes on from tile to tile, so that contacts next to each other over the tile's border have lengths next to each other.
 */
interface Contact {
  readonly onA: number;
  readonly onB: number;
  readonly apart: number;
}

/** Contacts next to each other as one junction, at the nearest of them. */
function gather(contacts: readonly Contact[], least: number): Pick<Contact, "onA" | "onB">[] {
  const groups: Contact[][] = [];
  for (const contact of [...contacts].sort((p, q) => p.onA - q.onA)) {
    const near = ({ onA, onB }: Contact) =>
      contact.onA - onA <= ONE_JUNCTION * least && Math.abs(contact.onB - onB) <= ONE_JUNCTION * least;
    const group = groups.find((members) => members.some(near));
    if (group === undefined) groups.push([contact]);
    else group.push(contact);
  }
  return groups.flatMap((group) => {
    const extent = group[group.length - 1].onA - group[0].onA;
    if (extent > TOGETHER * least) return [];
    const nearest = Math.min(...group.map(({ apart }) => apart));
    const best = group.filter(({ apart }) => apart <= nearest + SAME_DISTANCE);
    const mean = (of: (contact: Contact) => number) => best.reduce((sum, one) => sum + of(one), 0) / best.length;
    return [{ onA: mean(({ onA }) => onA), onB: mean(({ onB }) => onB) }];
  });
}

/** Every pair of sides that comes within reach, where it is nearest. */
function contactsOf(a: LaidLine, b: LaidLine, how: Meeting): Contact[] {
  const { shift, reach, endsOnly } = how;
  const found: Contact[] = [];
  const bSides = sidesNear(
    b,
    { low: [a.box.low[0] - shift, a.box.low[1]], high: [a.box.high[0] - shift, a.box.high[1]] },
    reach,
  );
  for (const i of sidesNear(
    a,
    { low: [b.box.low[0] + shift, b.box.low[1]], high: [b.box.high[0] + shift, b.box.high[1]] },
    reach,
  )) {
    const [p, q] = [a.walk.points[i], a.walk.points[i + 1]];
    for (const j of bSides) {
      const r = moved(b.walk.points[j], shift);
      const s = moved(b.walk.points[j + 1], shift);
      if (apartInBoxes(p, q, r, s, reach)) continue;
      for (const { t, w, apart } of nearest(p, q, r, s, reach)) {
        const onA = a.walk.stations[i] + t * (a.walk.stations[i + 1] - a.walk.stations[i]);
        const onB = b.walk.stations[j] + w * (b.walk.stations[j + 1] - b.walk.stations[j]);
        if (how.self && besideItself(a, onA, onB, how)) continue;
        if (endsOnly && !(isEnd(a, onA) && b.shares) && !(isEnd(b, onB) && a.shares)) continue;
        const strandB = b.line.kind === "strand";
        found.push({
          onA: !strandB && a.line.kind === "strand" ? onA - how.copy * a.walk.length : onA,
          onB: strandB ? onB + how.copy * b.walk.length : onB,
          apart,
        });
      }
    }
  }
  return found;
}

/** Whether both arc lengths are one place of a line, or next to it along the line. */
function besideItself({ line, walk }: LaidLine, onA: number, onB: number, { copy, least }: Meeting): boolean {
  // A strand goes on into its own copy; a loop into its own start.
  if (line.kind === "strand") return Math.abs(onA - onB - copy * walk.length) < TOGETHER * least;
  if (copy !== 0) return false;
  if (onA > onB) return true;
  const between = onB - onA;
  return (line.kind === "loop" ? Math.min(between, walk.length - between) : between) < TOGETHER * least;
}

function isEnd({ line, walk }: LaidLine, s: number): boolean {
  return !isCyclic(line) && (s <= SAME_DISTANCE || s >= walk.length - SAME_DISTANCE);
}

interface Nearest {
  /** Shares of the first and the second side. */
  readonly t: number;
  readonly w: number;
  readonly apart: number;
}

/** Where two sides cross, or else their ends that lie within reach of the other side. */
function nearest(p: Point2, q: Point2, r: Point2, s: Point2, reach: number): Nearest[] {
  const crossing = crossAt(p, q, r, s);
  if (crossing !== undefined) return [{ ...crossing, apart: 0 }];
  const ends: Nearest[] = [
    ...[p, q].map((end, t) => ({ t, ...spread(end, r, s, "w") })),
    ...[r, s].map((end, w) => ({ w, ...spread(end, p, q, "t") })),
  ] as Nearest[];
  return ends.filter(({ apart }) => apart <= reach);
}

function spread(point: Point2, a: Point2, b: Point2, name: "t" | "w"): Partial<Nearest> {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / square;
  const share = Math.min(1, Math.max(0, along));
  return { [name]: share, apart: Math.hypot(point[0] - a[0] - share * dx, point[1] - a[1] - share * dy) };
}

function crossAt(p: Point2, q: Point2, r: Point2, s: Point2): { t: number; w: number } | undefined {
  const [ax, ay, bx, by] = [q[0] - p[0], q[1] - p[1], s[0] - r[0], s[1] - r[1]];
  const area = ax * by - ay * bx;
  if (area === 0) return undefined;
  const [cx, cy] = [r[0] - p[0], r[1] - p[1]];
  const [t, w] = [(cx * by - cy * bx) / area, (cx * ay - cy * ax) / area];
  return t >= 0 && t <= 1 && w >= 0 && w <= 1 ? { t, w } : undefined;
}

/** Places by arc length, rising, those nearer than `reach` as one. */
function distinct(places: readonly number[], walk: Walk, cyclic: boolean, reach: number): number[] {
  const { length } = walk;
  const inside = places.map((s) => (cyclic ? s - length * Math.floor(s / length) : s)).sort((a, b) => a - b);
  const kept: number[] = [];
  for (const s of inside) if (kept.length === 0 || s - kept[kept.length - 1] > reach) kept.push(s);
  if (cyclic && kept.length > 1 && kept[0] + length - kept[kept.length - 1] <= reach) kept.pop();
  return kept.map((s) => walk.locate(s));
}

/** First and last copy of b, in periods, that comes within reach of a. */
function copiesNear(a: Box, b: Box, period: number, reach: number): [first: number, last: number] {
  if (b.low[1] > a.high[1] + reach || b.high[1] < a.low[1] - reach) return [0, -1];
  return [Math.ceil((a.low[0] - reach - b.high[0]) / period), Math.floor((a.high[0] + reach - b.low[0]) / period)];
}

function sidesNear({ walk: { points } }: LaidLine, box: Box, reach: number): number[] {
  const near: number[] = [];
  for (let i = 0; i + 1 < points.length; i++) {
    if (!apartInBoxes(points[i], points[i + 1], box.low, box.high, reach)) near.push(i);
  }
  return near;
}

function apartInBoxes(p: Point2, q: Point2, r: Point2, s: Point2, reach: number): boolean {
  for (const k of [0, 1]) {
    if (Math.max(p[k], q[k]) + reach < Math.min(r[k], s[k])) return true;
    if (Math.max(r[k], s[k]) + reach < Math.min(p[k], q[k])) return true;
  }
  return false;
}

function boxOf(points: readonly Point2[]): Box {
  let [left, low, right, high] = [points[0][0], points[0][1], points[0][0], points[0][1]];
  for (const [u, v] of points) {
    left = Math.min(left, u);
    right = Math.max(right, u);
    low = Math.min(low, v);
    high = Math.max(high, v);
  }
  return { low: [left, low], high: [right, high] };
}

function moved([u, v]: Point2, shift: number): Point2 {
  return [u + shift, v];
}
