/**
 * Where grains and prongs should stand, by circles: one between neighbours where their circles cross, the others at the stone's
 * own angles. Of stones that are not round no place is told.
 */
import { vec3 } from "gl-matrix";
import type { Point3 } from "../../../base/math/point.js";
import { TURN } from "../../../base/units.js";
import type { StoneView } from "./stone-view.js";
import { POSTS_APART } from "./told.js";

export interface PostsAsked {
  /** From a girdle to a post's axis, mm; of one that is shared. */
  readonly away: number;
  readonly sharedAway: number;
  readonly radius: number;
  readonly wanted: number;
  readonly shared: boolean;
  /** Angle of the first of a stone's own, radians from its length; the others follow evenly. */
  readonly first: number;
}

/** An axis: a place and a unit vector. */
export interface Axis {
  readonly at: Point3;
  readonly out: Point3;
  readonly stones: readonly StoneView[];
}

/** What is nearer to a girdle than it should be by less is clear of it, mm. */
const SLACK = 0.02;

/** Posts that two or three hold a stone by are its own. */
const LEAST_SHARED = 4;

export function postAxes(stones: readonly StoneView[], asked: PostsAsked): Axis[] {
  const { wanted, shared, away, first, radius } = asked;
  const axes = shared && wanted >= LEAST_SHARED ? sharedAxes(stones, asked) : [];
  for (const stone of stones) {
    if (axes.filter((axis) => axis.stones.includes(stone)).length >= wanted) continue;
    const own = Array.from({ length: wanted }, (_, i) => first + (TURN * i) / wanted);
    for (const angle of own) {
      const reach = (stone.radius ?? 0) + away;
      const at = stone.space([reach * Math.cos(angle), reach * Math.sin(angle), 0]);
      const free = axes.every((axis) => vec3.distance(axis.at, at) >= POSTS_APART * radius);
      if (free && isClear(stones, at, away)) axes.push({ at, out: stone.placed.out, stones: [stone] });
    }
  }
  return axes;
}

function sharedAxes(stones: readonly StoneView[], asked: PostsAsked): Axis[] {
  const found: Axis[] = [];
  for (const [i, a] of stones.entries()) {
    for (const b of stones.slice(i + 1)) found.push(...crossing(a, b, stones, asked));
  }
  const merged: Axis[][] = [];
  for (const axis of found) {
    const near = merged.find(([one]) => vec3.distance(one.at, axis.at) < POSTS_APART * asked.radius);
    if (near === undefined) merged.push([axis]);
    else near.push(axis);
  }
  return merged.map((axes) => {
    const [x, y, z] = [0, 1, 2].map((k) => axes.reduce((sum, { at }) => sum + at[k], 0) / axes.length);
    return { at: [x, y, z], out: axes[0].out, stones: axes.flatMap((axis) => axis.stones) };
  });
}

/** Where two circles round neighbours cross, over the plane half way between theirs. */
function crossing(
  a: StoneView,
  b: StoneView,
  stones: readonly StoneView[],
  { sharedAway, radius }: PostsAsked,
): Axis[] {
  const [ra, rb] = [(a.radius ?? 0) + sharedAway, (b.radius ?? 0) + sharedAway];
  const way = vec3.subtract([0, 0, 0], b.placed.at, a.placed.at);
  if (vec3.length(way) > ra + rb) return [];
  const out = vec3.normalize([0, 0, 0], vec3.add([0, 0, 0], a.placed.out, b.placed.out)) as unknown as Point3;
  const along = vec3.normalize([0, 0, 0], vec3.scaleAndAdd([0, 0, 0], way, out, -vec3.dot(way, out)));
  const distance = vec3.dot(way, along);
  // From the first stone's middle to the line through both crossings, and along it.
  const foot = (distance ** 2 + ra ** 2 - rb ** 2) / (2 * distance);
  const half = Math.sqrt(Math.max(0, ra ** 2 - foot ** 2));
  if (2 * half < POSTS_APART * radius) return [];
  const across = vec3.cross([0, 0, 0], out, along);
  const lean = vec3.subtract([0, 0, 0], b.placed.out, a.placed.out);
  const rise = (vec3.dot(lean, along) * distance) / 8;
  return [1, -1].flatMap((side): Axis[] => {
    const [x, y, z] = [0, 1, 2].map((k) => {
      const middle = (a.placed.at[k] + b.placed.at[k]) / 2;
      return middle + (foot - distance / 2) * along[k] + side * half * across[k] + rise * out[k];
    });
    const at: Point3 = [x, y, z];
    return isClear(stones, at, sharedAway) ? [{ at, out, stones: [a, b] }] : [];
  });
}

function isClear(stones: readonly StoneView[], at: Point3, away: number): boolean {
  return stones.every((stone) => {
    if (vec3.distance(stone.placed.at, at) > stone.length + away) return true;
    const [x, y] = stone.local(at);
    return stone.outside(x, y) > away - SLACK;
  });
}
