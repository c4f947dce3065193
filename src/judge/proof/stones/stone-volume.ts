/**
 * What settings add to a ring's volume and take from it: columns round every stone, met in closed form, spread evenly over a disc.
 *
 * Above the seat columns stand along its normals, below it along the radius, where those of a tight crown would cross. A place that
 * lies in the discs of several stones counts a part of itself for each.
 */
import type { Band } from "../../../band/band.js";
import type { BandSurface } from "../../../band/surface/surface.js";
import { PointGrid } from "../../../base/math/point-grid.js";
import { TURN } from "../../../base/units.js";
import { columnVolume } from "../column-volume.js";
import { columnAt, GROUPS, type Section } from "../columns.js";
import { type AddedVolume, errorOf } from "../expected-volume.js";
import type { Intent } from "../intent.js";
import { type Intervals, intersect } from "../intervals.js";
import { inDisc } from "./in-disc.js";
import type { StoneView } from "./stone-view.js";
import { asideOf, beyondOf } from "./surrounded.js";
import { leftBy, type ToldStones } from "./told-stones.js";

export interface StoneVolumeOptions {
  readonly band: Band;
  readonly wrap: BandSurface;
  readonly intent: Intent;
  readonly told: ToldStones;
  /** Of how many turned images of a unit the ring is made: stones of all units share their places. */
  readonly units: number;
  /** mm below the seat that the pattern is sunk; 0 or less. */
  readonly floor: number;
  /** By how much settings are told smaller and larger, mm. */
  readonly by: number;
}

/** Places round a stone that is no other's image, and round all stones at most (chosen: hollows to about a hundredth). */
const A_STONE = 384;
const MOST = 8192;

/** A stone's disc: its middle, as angle and place across, and how far it reaches, mm. */
interface Disc {
  readonly angle: number;
  readonly across: number;
  /** Of the surface there, mm from the axis. */
  readonly radius: number;
  readonly reach: number;
}

export function stoneVolume(options: StoneVolumeOptions): AddedVolume {
  const { told, units } = options;
  const discs = told.views.map((view) => discOf(view, options));
  const share = sharing(discs);
  const sectionAt = sectionsOf(options);
  const total = Math.min(MOST, Math.ceil(A_STONE * Math.max(1, discs.length / units)));
  const groups = new Array<number>(GROUPS).fill(0);
  // Places of one stone are in all groups in turn: an even number of stones has factors in common with that of groups.
  const isOdd = discs.length % 2 === 1;
  let [sum, open] = [0, 0];
  for (let k = 0; k < total; k++) {
    const disc = discs[k % discs.length];
    const [x, y] = inDisc(k);
    const place = { angle: disc.angle + (disc.reach * x) / disc.radius, across: disc.across + disc.reach * y };
    const area = (TURN / 2) * disc.reach ** 2 * (discs.length / total);
    const weight = (area * share(place.angle, place.across)) / disc.radius;
    const change = changeAt({ ...place, section: sectionAt(place.angle) }, weight, options);
    sum += change.sum;
    open += change.open;
    groups[(k + (isOdd ? 0 : Math.floor(k / discs.length))) % GROUPS] += change.sum;
  }
  return { sum, open, error: errorOf(groups) };
}

/** Discs reach so much farther than what is made for a stone: the surface is bent (chosen). */
const WIDER = 1.06;

function discOf(view: StoneView, { band, wrap, told }: StoneVolumeOptions): Disc {
  const [x, y, w] = view.placed.at;
  const angle = Math.atan2(y, x);
  const line = wrap.lineAt(angle);
  const [v] = line.inverse(w, Math.hypot(x, y));
  const [end] = line.point(Math.sign(w) * line.reach, 0);
  // Beside the seat places are told by w, so far beyond its end.
  const across = Math.abs(v) < line.reach ? v : Math.sign(w) * (line.reach + Math.abs(w - end));
  const reach = WIDER * Math.hypot(beyondOf(view, told.views), asideOf(view));
  const radius = Math.abs(v) < line.reach ? line.point(v, 0)[1] : band.outsideRadius;
  return { angle, across, radius, reach };
}

/** For a place the part of it that each disc over it counts. */
function sharing(discs: readonly Disc[]): (angle: number, across: number) => number {
  const far = discs.reduce((most, { reach }) => Math.max(most, reach), 0);
  const least = discs.reduce((radius, disc) => Math.min(radius, disc.radius), Number.POSITIVE_INFINITY);
  const grid = new PointGrid<Disc>(far);
  const spot = (angle: number, across: number) => [least * Math.cos(angle), least * Math.sin(angle), across] as const;
  for (const disc of discs) grid.add(spot(disc.angle, disc.across), disc);
  return (angle, across) => {
    let over = 0;
    for (const disc of grid.near(spot(angle, across))) {
      const off = angle - disc.angle;
      const around = disc.radius * (off - TURN * Math.round(off / TURN));
      if (Math.hypot(around, across - disc.across) <= disc.reach) over++;
    }
    return 1 / Math.max(1, over);
  };
}

interface Change {
  readonly sum: number;
  readonly open: number;
}

/** The band at an angle: of one that is the same all round it is worked out once. */
function sectionsOf({ band, wrap }: StoneVolumeOptions): (angle: number) => Section {
  const at = (angle: number) => ({ line: wrap.lineAt(angle), polyline: band.sectionAt(angle).polyline });
  if (!band.revolved) return at;
  const section = at(0);
  return () => section;
}

function changeAt(
  { angle, across, section }: Pick<Where, "angle" | "across" | "section">,
  weight: number,
  options: StoneVolumeOptions,
): Change {
  const { wrap, floor } = options;
  const { line } = section;
  const around = ((angle % TURN) + TURN) % TURN;
  if (Math.abs(across) >= line.reach) {
    const side = Math.sign(across);
    const w = line.point(side * line.reach, 0)[0] + side * (Math.abs(across) - line.reach);
    return changeOf({ on: "rest", angle: around, u: wrap.uAt(around), across: w, section }, weight, options, WHOLE);
  }
  const upper = changeOf({ on: "seat", angle: around, u: wrap.uAt(around), across, section }, weight, options, [
    floor,
    Number.MAX_VALUE,
  ]);
  const lower = changeBelow({ angle: around, across, section }, weight, options);
  return { sum: upper.sum + lower.sum, open: upper.open + lower.open };
}

const WHOLE: Intervals = [-Number.MAX_VALUE, Number.MAX_VALUE];

type Where = Parameters<Intent["at"]>[0];

const NO_CHANGE: Change = { sum: 0, open: 0 };

/** What settings change of a column, between two places along it. */
function changeOf(place: Where, weight: number, { intent, told, by }: StoneVolumeOptions, within: Intervals): Change {
  const stand = columnAt(place);
  const near = told.near(place.angle, stand);
  if (near.length === 0) return NO_CHANGE;
  const without = intent.at(place, stand, { stones: false }).likely;
  const left = leftBy(near, without, by);
  const of = (set: Intervals) => columnVolume({ stand, weight }, intersect(set, within));
  return { sum: of(left.likely) - of(without), open: (of(left.most) - of(left.least)) / 2 };
}

/** The same below the seat, along the radius: there is the band's metal alone, unless a hole goes through it. */
function changeBelow(
  { angle, across, section }: Pick<Where, "angle" | "across" | "section">,
  weight: number,
  { wrap, intent, told, floor, by }: StoneVolumeOptions,
): Change {
  if (intent.pierced({ on: "seat", angle, u: wrap.uAt(angle), across, section })) return NO_CHANGE;
  const [[w, r], [, nr]] = [section.line.point(across, 0), section.line.normal(across)];
  const stand = columnAt({ on: "rest", across: w, section });
  const top = r + floor / nr - stand.point[1];
  const set = intersect(stand.band, [-Number.MAX_VALUE, top]);
  const near = told.near(angle, stand);
  if (near.length === 0) return NO_CHANGE;
  const left = leftBy(near, set, by);
  // A mm across the seat is as much along the axis as its normal faces out.
  const of = (some: Intervals) =>
    columnVolume({ stand, weight: weight * nr }, intersect(some, [-Number.MAX_VALUE, top]));
  return { sum: of(left.likely) - of(set), open: (of(left.most) - of(left.least)) / 2 };
}
