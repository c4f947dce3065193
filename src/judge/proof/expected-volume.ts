/**
 * The volume that a ring should have: the bare band's by its exact section, and what the columns add to it and take away.
 *
 * Near the seat a column's own volume is taken. Deeper, columns along the normals of a tight crown meet and cross, so what a
 * hole takes there is counted along the radius, as the hole goes: place by place from the bore up to where columns begin.
 */
import type { Pattern } from "../../pattern/laid-out.js";
import { columnVolume } from "./column-volume.js";
import { type Column, columnAt, type Place, type Stand } from "./columns.js";
import type { Held } from "./held.js";
import type { Intent } from "./intent.js";
import { type Intervals, intersect } from "./intervals.js";

/** A column with what it should hold. */
export type Holding = Column & { readonly held: Held };

/** What was drawn adds to the bare band's volume. */
export interface AddedVolume {
  /** mm³ */
  readonly sum: number;
  /** Half of what is between the least and the most that columns may hold, mm³. */
  readonly open: number;
  /** Standard error of the sum, since columns stand for what is round them, mm³. */
  readonly error: number;
}

/** Columns in the order in which they were laid out, line by line. */
export function addedVolume(columns: readonly Holding[], pattern: Pattern, intent: Intent): AddedVolume {
  const isPierced = pattern.bodies.some(({ mode }) => mode === "pierced");
  const sunk = pattern.bodies.filter(({ mode }) => mode === "sunk").map(({ height }) => height);
  const floor = -Math.max(0, ...sunk);
  let [sum, open, squares] = [0, 0, 0];
  const lines: Line[] = [];
  for (const column of columns) {
    const { stand, place } = column;
    const held = overSeat(column, intent);
    const isCut = isPierced && place.on === "seat";
    const of = (set: Intervals) => columnVolume(column, isCut ? above(set, floor) : set);
    let volume = held.likely === stand.band ? 0 : of(held.likely) - of(stand.band);
    if (isCut) volume += deepVolume(column, floor, intent);
    if (held.maybe !== held.surely) open += (of(held.maybe) - of(held.surely)) / 2;
    sum += volume;
    squares += volume ** 2;
    const line = lines[lines.length - 1];
    if (line?.stand === stand) line.sum += volume;
    else lines.push({ stand, place, sum: volume });
  }
  // Even places tell no less than places at random, nor than lines on which every place is right: the lesser error holds.
  const atRandom = Math.sqrt(Math.max(0, squares - sum ** 2 / Math.max(1, columns.length)));
  return { sum, open, error: Math.min(atRandom, acrossLines(lines)) };
}

/** The columns that stand on one line across the band. */
interface Line {
  readonly stand: Stand;
  readonly place: Place;
  sum: number;
}

/** Of the squares of second differences in even spacing a sixth is the variance (K. M. Wolter, Introduction to Variance Estimation, on systematic samples). */
const SECOND_DIFFERENCES = 6;

/** The standard error of a sum over lines, by how much each is off the mean of those beside it. */
function acrossLines(lines: readonly Line[]): number {
  let squares = 0;
  for (let i = 2; i < lines.length; i++) {
    const [a, b, c] = [lines[i - 2], lines[i - 1], lines[i]];
    if (a.place.on !== c.place.on || a.place.section !== c.place.section) continue;
    squares += (a.sum - 2 * b.sum + c.sum) ** 2;
  }
  return Math.sqrt(squares / SECOND_DIFFERENCES);
}

/** What a column on the seat holds, but for what beads have beside the seat, where other columns count them. */
function overSeat({ place, stand, held }: Holding, intent: Intent): Held {
  const { point, way } = stand;
  if (place.on !== "seat" || way[0] === 0) return held;
  const { line } = place.section;
  const ends = [-1, 1].map((side) => (line.point(side * line.reach, 0)[0] - point[0]) / way[0]);
  const beads = [Math.min(...ends), Math.max(...ends)] as const;
  return beads[1] > intent.tallest ? held : intent.at(place, stand, { beads });
}

/** What lies deeper than a floor: marks in the bore by columns that pass no hole, holes along the radius. */
function deepVolume(column: Holding, floor: number, intent: Intent): number {
  const { place, stand } = column;
  const below = (set: Intervals) => columnVolume(column, set) - columnVolume(column, above(set, floor));
  const whole = intent.hasMarks ? intent.at(place, stand, { holes: false }).likely : stand.band;
  const marks = below(whole) - below(stand.band);
  return intent.pierced(place) ? marks - wallVolume(column, floor) : marks;
}

/** Of the wall along the radius, from the bore up to a floor under the seat. */
function wallVolume({ place, stand, weight }: Holding, floor: number): number {
  const { point, way, scale } = stand;
  const wall = columnAt({ on: "rest", across: point[0], section: place.section });
  const [low, high] = [wall.point[1] + (wall.band[0] ?? 0), point[1] + floor / way[1]];
  return high > low ? (weight * scale * way[1] * (high ** 2 - low ** 2)) / 2 : 0;
}

function above(set: Intervals, floor: number): Intervals {
  return intersect(set, [floor, Number.MAX_VALUE]);
}
