/**
 * Which strand passes over at each crossing.
 *
 * Crossings that a whole period apart are alike: one class has one answer. Along every strand the answers alternate, and
 * the pattern's symmetry keeps them; both are statements about pairs of classes. Every alternating diagram of closed
 * curves in the plane has an order (P. G. Tait, "On knots", 1876); on a band, round which strands close after a period,
 * it may have none.
 */
import { AnnuletError } from "../../base/errors.js";
import { friezeGroups, type TileOperation } from "../../base/frieze/symmetry.js";
import { ParitySets } from "../../base/math/parity.js";
import type { Point2 } from "../../base/math/point.js";
import { showLength } from "../../base/units.js";
import type { Strip } from "../../flat/strip.js";
import { type Crossing, type Pass, SAME_PLACE, type Strand } from "./crossings.js";

export interface OrderOptions {
  /** Names of the woven regions, by their numbers. */
  readonly names: readonly string[];
  /** Whether the region later in the list passes over, instead of by turns. */
  readonly later: boolean;
  /** Where the weave stands in the document, for errors. */
  readonly path: string;
  /** Between which u strands are whole, mm. */
  readonly window: Point2;
}

/** For each crossing, which of its two passes goes over. */
export type Order = readonly (0 | 1)[];

/** Crossings that differ by whole periods. */
interface CrossingClass {
  readonly at: Point2;
  /** The angles of its two passes, in the order of its first crossing. */
  readonly angles: readonly [number, number];
  readonly members: readonly [number, number];
}

/** Turns of two lines by less than this are one, radians; crossings of a place whose lines turn otherwise are several. */
const SAME_ANGLE = 0.05;

/**
 * Decides every crossing.
 *
 * @throws AnnuletError `weave-no-order`, `weave-mirror`, `weave-own`, `weave-triple`
 */
export function orderCrossings(
  strip: Strip,
  strands: readonly Strand[],
  crossings: readonly Crossing[],
  options: OrderOptions,
): Order {
  const classes: CrossingClass[] = [];
  const places = crossings.map((crossing) => place(strip, strands, classes, crossing, options.path));
  if (options.later) return places.map(({ kind, side }) => (laterSide(classes[kind], options) === side ? 0 : 1));
  const sets = new ParitySets(classes.length);
  const sorted = { crossings, places, classes };
  relateAlong(strands, sorted, sets, options);
  relateImages(strip, sorted, sets, { strands, options });
  const first = firstOfSets(strip, classes, sets);
  return places.map(({ kind, side }) => {
    const { root, differs } = sets.rootOf(kind);
    const known = first.get(root) as number;
    const overSide = (firstSide(classes[known]) === 1) !== (differs !== sets.rootOf(known).differs) ? 1 : 0;
    return overSide === side ? 0 : 1;
  });
}

/**
 * Of the classes that hang together, the one that decides for them all: its crossing lies nearest to the tile's left
 * border, of several the lowest.
 *
 * @returns by the number of a set's root
 */
function firstOfSets(strip: Strip, classes: readonly CrossingClass[], sets: ParitySets): ReadonlyMap<number, number> {
  const first = new Map<number, number>();
  classes.forEach((own, kind) => {
    const { root } = sets.rootOf(kind);
    const best = first.get(root);
    if (best === undefined || isBefore(strip, own.at, classes[best].at)) first.set(root, kind);
  });
  return first;
}

/** Whether a place lies before another in its period, of two above each other the lower. */
function isBefore({ period, grid }: Strip, [au, av]: Point2, [bu, bv]: Point2): boolean {
  const round = period / grid.scale;
  // What lies on the border lies at 0, on whichever side of it rounding put it.
  const [a, b] = [au, bu].map((u) => u - round * Math.floor((u + SAME_PLACE) / round));
  return Math.abs(a - b) > SAME_PLACE ? a < b : av < bv - SAME_PLACE;
}

/**
 * The pass of a class that goes over where nothing else decides: that of the later region; of one region, that whose line
 * stands at the smaller angle, counter-clockwise from the band's direction.
 */
function firstSide({ members, angles }: CrossingClass): 0 | 1 {
  if (members[0] !== members[1]) return members[1] > members[0] ? 1 : 0;
  return angles[1] < angles[0] ? 1 : 0;
}

function laterSide({ members, at }: CrossingClass, { names, path }: OrderOptions): 0 | 1 {
  if (members[0] !== members[1]) return members[1] > members[0] ? 1 : 0;
  throw new AnnuletError({
    code: "weave-own",
    message: `${names[members[0]]} crosses itself at ${showPlace(at)}, and the order of the list cannot say which part passes over`,
    path: `${path}.over`,
    value: "later",
    allowed: '"alternate", or regions that do not cross themselves',
    hint: "draw the two parts as two regions of the set",
  });
}

/** Whether two places differ by whole periods. */
function isAlike({ period, grid }: Strip, [u, v]: Point2, [x, y]: Point2): boolean {
  const rounds = Math.round(((u - x) * grid.scale) / period);
  return Math.hypot(u - x - (rounds * period) / grid.scale, v - y) < SAME_PLACE;
}

/** The class of a crossing, and which of the class's sides its first pass is. Found classes are added. */
function place(
  strip: Strip,
  strands: readonly Strand[],
  classes: CrossingClass[],
  { at, passes }: Crossing,
  path: string,
): { readonly kind: number; readonly side: 0 | 1 } {
  const angles: [number, number] = [passes[0].angle, passes[1].angle];
  const kind = classes.findIndex((known) => isAlike(strip, known.at, at));
  if (kind === -1) {
    const members: [number, number] = [strands[passes[0].strand].member, strands[passes[1].strand].member];
    const period = strip.period / strip.grid.scale;
    const home: Point2 = [at[0] - period * Math.floor(at[0] / period), at[1]];
    return { kind: classes.push({ at: home, angles, members }) - 1, side: 0 };
  }
  const side = sideLike(classes[kind].angles, angles[0]);
  const other = sideLike(classes[kind].angles, angles[1]);
  if (side !== undefined && other !== undefined && side !== other) return { kind, side };
  throw new AnnuletError({
    code: "weave-triple",
    message: `more than two strands cross at ${showPlace(at)}`,
    path,
    allowed: "two strands at each crossing",
    hint: "move one of them aside, so that they cross two by two",
  });
}

/** The one of two lines that has an angle. */
function sideLike([a, b]: readonly [number, number], angle: number): 0 | 1 | undefined {
  const apart = (other: number) => {
    const turn = Math.abs(angle - other);
    return Math.min(turn, Math.PI - turn);
  };
  const nearest = apart(a) <= apart(b) ? 0 : 1;
  return apart(nearest === 0 ? a : b) < SAME_ANGLE ? nearest : undefined;
}

/** Passes of each strand in its order, each with its crossing and its number there. */
export function passesAlong(
  strands: readonly Strand[],
  crossings: readonly Crossing[],
): { readonly crossing: number; readonly which: 0 | 1; readonly pass: Pass }[][] {
  const along: { crossing: number; which: 0 | 1; pass: Pass }[][] = strands.map(() => []);
  crossings.forEach(({ passes }, crossing) => {
    for (const which of [0, 1] as const) along[passes[which].strand].push({ crossing, which, pass: passes[which] });
  });
  for (const list of along) list.sort((a, b) => a.pass.s - b.pass.s);
  return along;
}

/** All crossings of a weave, each with its class and the side of it on which its first strand runs. */
interface SortedCrossings {
  readonly crossings: readonly Crossing[];
  readonly places: readonly { readonly kind: number; readonly side: 0 | 1 }[];
  readonly classes: readonly CrossingClass[];
}

function relateAlong(
  strands: readonly Strand[],
  { crossings, places, classes }: SortedCrossings,
  sets: ParitySets,
  { names, path, window: [low, high] }: OrderOptions,
): void {
  passesAlong(strands, crossings).forEach((list, i) => {
    const count = strands[i].closed ? list.length : list.length - 1;
    for (let k = 0; k < count; k++) {
      const [a, b] = [list[k], list[(k + 1) % list.length]];
      if ([a, b].some(({ crossing }) => crossings[crossing].at[0] < low || crossings[crossing].at[0] > high)) continue;
      const sideOf = ({ crossing, which }: typeof a) => (places[crossing].side === which ? 0 : 1);
      const unlike = sideOf(a) === sideOf(b);
      if (sets.relate(places[a.crossing].kind, places[b.crossing].kind, unlike)) continue;
      const { at } = classes[places[b.crossing].kind];
      throw new AnnuletError({
        code: "weave-no-order",
        message: `${names[strands[i].member]} cannot pass over and under by turns: going round, it would have to do both at ${showPlace(at)}`,
        path: `${path}.over`,
        value: "alternate",
        allowed: "strands that cross an even number of times before they come again",
        hint: 'say "cycle": 2 in the pattern, so that the order comes again after two tiles, or "over": "later", so that the later region in the list passes over',
      });
    }
  });
}

/**
 * The order is as symmetric as the pattern: an image of what passes over passes over.
 *
 * In an alternating diagram all crossings are of one hand once its regions are shaded by turns. What turns the band over in
 * its plane, a mirror or a glide, turns that hand, unless it brings shaded regions on to blank ones; a mirror across the band
 * goes through some region and brings it on to itself, so under one no strands that cross can pass over and under by turns.
 *
 * @param sets knows already what the strands ask
 */
function relateImages(strip: Strip, sorted: SortedCrossings, sets: ParitySets, along: Along): void {
  const { group } = strip;
  const at = contradiction(strip, group.operations, sorted.classes, sets);
  if (at === undefined) return;
  const kept = friezeGroups.filter(({ operations }) => {
    if (operations.length >= group.operations.length || !operations.every((one) => isAmong(one, group.operations))) {
      return false;
    }
    const own = new ParitySets(sorted.classes.length);
    relateAlong(along.strands, sorted, own, along.options);
    return contradiction(strip, operations, sorted.classes, own) === undefined;
  });
  const names = kept.map(({ name }) => JSON.stringify(name));
  throw new AnnuletError({
    code: "weave-mirror",
    message: `the pattern's symmetry ${group.name} exchanges what passes over and what passes under at ${showPlace(at)}`,
    path: along.options.path,
    value: group.name,
    allowed: `a symmetry that leaves the order of the strands as it is: here ${names.join(" or ")}`,
    hint: `say "symmetry": ${names[names.length - 1]} and draw what the other images completed (motifs are whole already); a mirror across the band turns every weave over`,
  });
}

/** What strands ask by themselves. */
interface Along {
  readonly strands: readonly Strand[];
  readonly options: OrderOptions;
}

function isAmong(one: TileOperation, operations: readonly TileOperation[]): boolean {
  return operations.some((o) => o.flipX === one.flipX && o.flipY === one.flipY && o.shift === one.shift);
}

/** A crossing whose image under an operation would have it the other way about; undefined where there is none. */
function contradiction(
  strip: Strip,
  operations: readonly TileOperation[],
  classes: readonly CrossingClass[],
  sets: ParitySets,
): Point2 | undefined {
  for (const operation of operations) {
    for (const [kind, { at, angles }] of classes.entries()) {
      const { point, turned } = imageOf(strip, at, angles[0], operation);
      const image = classes.findIndex((other) => isAlike(strip, other.at, point));
      const side = image === -1 ? undefined : sideLike(classes[image].angles, turned);
      if (side !== undefined && !sets.relate(kind, image, side === 1)) return at;
    }
  }
  return undefined;
}

/** A place and a line's angle under an operation about the nearest row's middle. */
function imageOf(strip: Strip, [u, v]: Point2, angle: number, operation: TileOperation) {
  const { flipX, flipY, shift } = operation;
  const rows = strip.rowMiddles.map((middle) => middle / strip.grid.scale);
  const row = rows.reduce((best, middle) => (Math.abs(middle - v) < Math.abs(best - v) ? middle : best));
  const point: Point2 = [(flipX ? -u : u) + shift * strip.tileWidth, flipY ? 2 * row - v : v];
  return { point, turned: flipX === flipY ? angle : Math.PI - angle };
}

function showPlace([u, v]: Point2): string {
  return `u ${showLength(u)}, v ${showLength(v)}`;
}
