/**
 * The volume that a ring should have but for its stones: the bare band's by its exact section, and what the columns add to it and
 * take away.
 *
 * Near the seat a column's own volume is taken. Deeper, columns along the normals of a tight crown meet and cross, so what a
 * hole takes there is counted along the radius, as the hole goes: place by place from the bore up to where columns begin.
 */
import type { Pattern } from "../../pattern/laid-out.js";
import { columnVolume } from "./column-volume.js";
import { type Column, columnAt, GROUPS } from "./columns.js";
import type { Held } from "./held.js";
import type { Intent } from "./intent.js";
import { type Intervals, intersect, without } from "./intervals.js";

/** A column with what it should hold if no stones were set. */
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

/** What columns that were laid out over the whole band add up to. */
export function addedVolume(columns: readonly Holding[], pattern: Pattern, intent: Intent): AddedVolume {
  const isPierced = pattern.bodies.some(({ mode }) => mode === "pierced");
  const sunk = pattern.bodies.filter(({ mode }) => mode === "sunk").map(({ height }) => height);
  const floor = -Math.max(0, ...sunk);
  let [sum, open] = [0, 0];
  const groups = new Array<number>(GROUPS).fill(0);
  for (const column of columns) {
    const { stand, place, group } = column;
    const held = overSeat(column, intent);
    const isCut = isPierced && place.on === "seat";
    const of = (set: Intervals) => columnVolume(column, isCut ? above(set, floor) : set);
    let volume = held.likely === stand.band ? 0 : of(held.likely) - of(stand.band);
    if (isCut) volume += deepVolume(column, floor, intent);
    if (held.maybe !== held.surely) open += (of(held.maybe) - of(held.surely)) / 2;
    const filled = of(overFillet(column, intent));
    open += filled / 2;
    volume += filled;
    sum += volume;
    groups[group] += volume;
  }
  return { sum, open, error: errorOf(groups) };
}

/**
 * The standard error of a sum over all groups, from how far these are apart: more than there is, as a group's columns lie less
 * evenly than all of them together (random groups: K. M. Wolter, Introduction to Variance Estimation).
 */
export function errorOf(sums: readonly number[]): number {
  const mean = sums.reduce((all, sum) => all + sum, 0) / GROUPS;
  const squares = sums.reduce((all, sum) => all + (sum - mean) ** 2, 0);
  return Math.sqrt((GROUPS * squares) / (GROUPS - 1));
}

/** What a column on the seat holds, but for what beads have beside the seat, where other columns count them. */
function overSeat({ place, stand, held }: Holding, intent: Intent): Held {
  const { point, way } = stand;
  if (place.on !== "seat" || way[0] === 0) return held;
  const { line } = place.section;
  const ends = [-1, 1].map((side) => (line.point(side * line.reach, 0)[0] - point[0]) / way[0]);
  const beads = [Math.min(...ends), Math.max(...ends)] as const;
  if (beads[1] > intent.tallest || !intent.hasBeadsBeyond(place, stand, beads)) return held;
  return intent.at(place, stand, { beads, stones: false });
}

/** How far inside the seat's edge it is asked what reaches the edge, mm: clear of the art's rounding (chosen). */
const INSIDE = 0.02;

/** Beads beside the edge are counted where they are. */
const NO_BEADS = [0, 0] as const;

/** What relief that reaches the seat's edge adds over the fillet at a rail's root, where it runs on to the rail's wall. */
function overFillet({ place, stand, held }: Holding, intent: Intent): Intervals {
  if (place.on !== "rest" || !intent.hasRails || intent.knows(place, stand)) return [];
  const { line } = place.section;
  const across = Math.sign(place.across) * (line.reach - INSIDE);
  const edge = { ...place, on: "seat" as const, across };
  const foot = columnAt(edge);
  const top = intent.at(edge, foot, { beads: NO_BEADS, stones: false }).likely.at(-1) ?? 0;
  const [low, high] = [stand.band.at(-1) ?? 0, foot.point[1] + top * foot.way[1] - stand.point[1]];
  // What is known to lie there, as of a filling that goes on over the rail, is counted already.
  return high > low ? without([low, high], held.likely) : [];
}

/** What lies deeper than a floor: marks in the bore by columns that pass no hole, holes along the radius. */
function deepVolume(column: Holding, floor: number, intent: Intent): number {
  const { place, stand } = column;
  const below = (set: Intervals) => columnVolume(column, set) - columnVolume(column, above(set, floor));
  const whole = intent.reachesDeep ? intent.at(place, stand, { holes: false, stones: false }).likely : stand.band;
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
