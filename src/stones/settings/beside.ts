/**
 * Where grains and prongs stand beside stones: one between neighbours serves both, what is left stands at each stone's own angles.
 */
import { vec3 } from "gl-matrix";
import type { Point2, Point3 } from "../../base/math/point.js";
import { PointGrid } from "../../base/math/point-grid.js";
import { type Frame, intoSpace, squareTo } from "../frame.js";
import { girdleBeside } from "./girdle-shape.js";
import { frameBetween, fromGirdle, outlineIn, pairsWithin, type StandingStone } from "./neighbours.js";

export interface BesideOptions {
  /** From the girdle to the axis of a post, mm. */
  readonly away: number;
  /** The same of one that two stones share. Default the same. */
  readonly sharedAway?: number;
  /** Of a post, mm. */
  readonly radius: number;
  /** How many hold a stone. */
  readonly wanted: number;
  /** Whether neighbours share them. */
  readonly shared: boolean;
  /** Where a stone's own stand, radians from its length. */
  readonly angles: readonly number[];
  readonly tolerance: number;
}

/** A post's place. */
export interface Standing {
  /** Its axis is the z axis of this frame, moved to (x, y). */
  readonly frame: Frame;
  readonly at: Point2;
  /** Numbers of the stones that it holds. */
  readonly holds: readonly number[];
}

/** What stands nearer to a girdle than it should by less is clear of it, mm (chosen). */
const SLACK = 0.02;

/** Posts whose axes are nearer to each other than this many radii are in each other's way (chosen: a little apart). */
const APART = 2.1;

/** The places of posts, and the numbers of stones for which fewer than two were found. */
export function placeBeside(
  stones: readonly StandingStone[],
  options: BesideOptions,
): { readonly posts: readonly Standing[]; readonly short: readonly number[] } {
  const near = nearStones(stones, options);
  const shared = options.shared ? sharedPosts(stones, near, options) : [];
  const taken = shared.map(({ frame, at }) => intoSpace(frame, [...at, 0]));
  const own = stones.flatMap((stone, i): Found[] => {
    // All its free places or none, so that what is symmetric stays so.
    if (shared.filter(({ holds }) => holds.includes(i)).length >= options.wanted) return [];
    return options.angles.flatMap((angle): Found[] => {
      const at = beside(stone, angle, options);
      const point = intoSpace(stone.frame, [...at, 0]);
      if (!isClear(near(point), point, options.away) || !isFree(taken, point, options.radius)) return [];
      return [{ standing: { frame: stone.frame, at, holds: [i] }, point }];
    });
  });
  // Where places of two stones are in each other's way one post stands half way between, whichever stone comes first.
  const between = gathered(own, options.radius).filter(({ frame, at, holds }) => {
    const point = intoSpace(frame, [...at, 0]);
    return holds.length === 1 || isClear(near(point), point, options.away);
  });
  const posts = [...shared, ...between];
  const short = stones.flatMap((_, i) =>
    posts.filter(({ holds }) => holds.includes(i)).length < LEAST_HELD ? [i] : [],
  );
  return { posts, short };
}

/** A stone that fewer hold falls out. */
const LEAST_HELD = 2;

/** Two or three of a stone are its own. */
const LEAST_SHARED = 4;

function sharedPosts(stones: readonly StandingStone[], near: Near, options: BesideOptions): Standing[] {
  const { sharedAway: away = options.away, radius, tolerance, wanted } = options;
  if (wanted < LEAST_SHARED) return [];
  const found: Found[] = [];
  for (const pair of pairsWithin(stones, away)) {
    const frame = frameBetween(stones, pair);
    if (frame === undefined) continue;
    const [a, b] = pair.map((i) => outlineIn(frame, stones[i], away, tolerance));
    const places = meetingsOf(a, b);
    // Where they hardly meet, both places are one in the middle of the row: each stone then has its own.
    if (
      places.some((at, k) =>
        places.some((other, l) => k < l && Math.hypot(at[0] - other[0], at[1] - other[1]) < APART * radius),
      )
    )
      continue;
    for (const at of places) {
      const point = intoSpace(frame, [...at, 0]);
      if (isClear(near(point), point, away)) found.push({ standing: { frame, at, holds: pair }, point });
    }
  }
  return gathered(found, radius);
}

interface Found {
  readonly standing: Standing;
  readonly point: Point3;
}

/** Where several stones meet, the places of each two of them lie close together: one post in their middle holds all. */
function gathered(found: readonly Found[], radius: number): Standing[] {
  const groups: Found[][] = [];
  const grid = new PointGrid<Found[]>(APART * radius);
  for (const one of found) {
    const group = grid.near(one.point).find(([first]) => distance(first.point, one.point) < APART * radius);
    if (group !== undefined) {
      group.push(one);
      continue;
    }
    const alone = [one];
    groups.push(alone);
    grid.add(one.point, alone);
  }
  return groups.map((group) => {
    const [{ standing }] = group;
    if (group.length === 1) return standing;
    const mean = (of: (one: Found) => Point3): Point3 => {
      const part = (k: 0 | 1 | 2) => group.reduce((sum, one) => sum + of(one)[k], 0) / group.length;
      return [part(0), part(1), part(2)];
    };
    // As much turned to the one stone as to the other, so that an image of both has the image of the post.
    const out = vec3.normalize(
      [0, 0, 0],
      mean((one) => one.standing.frame.out),
    ) as unknown as Point3;
    const frame = { at: mean(({ point }) => point), along: squareTo(out, standing.frame.along), out };
    return { frame, at: [0, 0], holds: [...new Set(group.flatMap((one) => one.standing.holds))] };
  });
}

/** The place beside a stone in a direction from its middle. */
function beside({ shape }: StandingStone, angle: number, { away, tolerance }: BesideOptions): Point2 {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  if (shape.radius !== undefined) return [(shape.radius + away) * cos, (shape.radius + away) * sin];
  const outline = girdleBeside(shape, away, tolerance, "hollow");
  let [a, at] = [outline[outline.length - 1], [0, 0] as Point2];
  for (const b of outline) {
    const [sideA, sideB] = [cos * a[1] - sin * a[0], cos * b[1] - sin * b[0]];
    if (sideA <= 0 && sideB > 0) {
      const share = sideA / (sideA - sideB);
      at = [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
    }
    a = b;
  }
  return at;
}

/** The stones beside which a point may lie. */
type Near = (point: Point3) => readonly StandingStone[];

function nearStones(stones: readonly StandingStone[], { away, sharedAway = away }: BesideOptions): Near {
  const reach = ({ shape }: StandingStone) => Math.hypot(shape.length, shape.width) / 2 + away + sharedAway;
  const grid = new PointGrid<StandingStone>(Math.max(...stones.map(reach)));
  for (const stone of stones) grid.add(stone.frame.at, stone);
  return (point) => grid.near(point);
}

function isClear(stones: readonly StandingStone[], point: Point3, away: number): boolean {
  return stones.every((stone) => fromGirdle(stone, point) > away - SLACK);
}

function isFree(taken: readonly Point3[], point: Point3, radius: number): boolean {
  return taken.every((other) => distance(other, point) >= APART * radius);
}

function distance([ax, ay, az]: Point3, [bx, by, bz]: Point3): number {
  return Math.hypot(ax - bx, ay - by, az - bz);
}

/** Where two convex outlines cross. */
function meetingsOf(one: readonly Point2[], other: readonly Point2[]): Point2[] {
  const found: Point2[] = [];
  let a = one[one.length - 1];
  for (const b of one) {
    let c = other[other.length - 1];
    for (const d of other) {
      const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
      const turn = ux * vy - uy * vx;
      const [s, t] = [
        ((c[0] - a[0]) * vy - (c[1] - a[1]) * vx) / turn,
        ((c[0] - a[0]) * uy - (c[1] - a[1]) * ux) / turn,
      ];
      if (s >= 0 && s < 1 && t >= 0 && t < 1) found.push([a[0] + s * ux, a[1] + s * uy]);
      c = d;
    }
    a = b;
  }
  return found;
}
