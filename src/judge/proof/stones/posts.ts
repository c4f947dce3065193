/**
 * Where grains and prongs should stand: one between neighbours where their outlines cross, the others at the stone's own angles.
 */
import { vec3 } from "gl-matrix";
import type { Point2, Point3 } from "../../../base/math/point.js";
import { PointGrid } from "../../../base/math/point-grid.js";
import { TURN } from "../../../base/units.js";
import { axesBetween, crossings, inSpace, outlineSeen, pairsNear } from "./between-stones.js";
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
  const isClear = clearOf(stones, asked);
  const together = shared && wanted >= LEAST_SHARED ? sharedAxes(stones, asked, isClear) : [];
  const standing = new PointGrid<Point3>(POSTS_APART * radius);
  const held = new Map<StoneView, number>();
  for (const { at, stones: by } of together) {
    standing.add(at, at);
    for (const stone of by) held.set(stone, (held.get(stone) ?? 0) + 1);
  }
  const own = stones.flatMap((stone) => {
    if ((held.get(stone) ?? 0) >= wanted) return [];
    return Array.from({ length: wanted }, (_, i): Axis => {
      const angle = first + (TURN * i) / wanted;
      const reach = stone.reachAt(angle, away);
      const at = stone.space([reach * Math.cos(angle), reach * Math.sin(angle), 0]);
      return { at, out: stone.placed.out, stones: [stone] };
    });
  });
  const free = own.filter(
    ({ at }) =>
      isClear(at, away) && standing.near(at).every((other) => vec3.distance(other, at) >= POSTS_APART * radius),
  );
  // Of two that are in each other's way one stands half way between.
  const alone = merged(free, radius).filter((axis) => axis.stones.length === 1 || isClear(axis.at, away));
  return [...together, ...alone];
}

type IsClear = (at: Point3, away: number) => boolean;

function sharedAxes(stones: readonly StoneView[], asked: PostsAsked, isClear: IsClear): Axis[] {
  const found = pairsNear(stones, asked.sharedAway).flatMap(([a, b]) => crossing(a, b, asked));
  return merged(
    found.filter(({ at }) => isClear(at, asked.sharedAway)),
    asked.radius,
  );
}

/** Axes that are too near to the first of others are one with it, in their middle. */
function merged(axes: readonly Axis[], radius: number): Axis[] {
  const apart = POSTS_APART * radius;
  const grid = new PointGrid<Axis[]>(apart);
  const groups: Axis[][] = [];
  for (const axis of axes) {
    const near = grid.near(axis.at).find(([one]) => vec3.distance(one.at, axis.at) < apart);
    if (near === undefined) {
      const alone = [axis];
      groups.push(alone);
      grid.add(axis.at, alone);
    } else near.push(axis);
  }
  return groups.map((group) => {
    if (group.length === 1) return group[0];
    const mean = (of: (axis: Axis) => Point3) => {
      const [x, y, z] = [0, 1, 2].map((k) => group.reduce((sum, axis) => sum + of(axis)[k], 0) / group.length);
      return [x, y, z] as const;
    };
    const out = vec3.normalize(
      [0, 0, 0],
      mean((axis) => axis.out),
    ) as unknown as Point3;
    return { at: mean(({ at }) => at), out, stones: [...new Set(group.flatMap((axis) => axis.stones))] };
  });
}

/** Where the outlines round neighbours cross, over the plane half way between theirs. */
function crossing(a: StoneView, b: StoneView, { sharedAway, radius }: PostsAsked): Axis[] {
  const axes = axesBetween(a, b);
  const places =
    a.radius === undefined || b.radius === undefined
      ? crossings(outlineSeen(a, sharedAway, axes), outlineSeen(b, sharedAway, axes))
      : circlesCross(a.radius + sharedAway, b.radius + sharedAway, axes.distance);
  const isTight = places.some(([x, y], i) =>
    places.slice(0, i).some(([ox, oy]) => Math.hypot(x - ox, y - oy) < POSTS_APART * radius),
  );
  if (isTight) return [];
  return places.map(([x, y]) => ({ at: inSpace(axes, [x, y, 0]), out: axes.out, stones: [a, b] }));
}

/** Where two circles cross whose middles lie half of a distance to either side. */
function circlesCross(ra: number, rb: number, distance: number): Point2[] {
  if (distance > ra + rb) return [];
  // From the first one's middle to the line through both crossings, and along it.
  const foot = (distance ** 2 + ra ** 2 - rb ** 2) / (2 * distance);
  const half = Math.sqrt(Math.max(0, ra ** 2 - foot ** 2));
  return [
    [foot - distance / 2, half],
    [foot - distance / 2, -half],
  ];
}

/** Whether a place lies farther from every girdle than a post should. */
function clearOf(stones: readonly StoneView[], { away, sharedAway }: PostsAsked): IsClear {
  const reach = Math.max(...stones.map(({ length, width }) => Math.hypot(length, width))) / 2;
  const grid = new PointGrid<StoneView>(reach + away + sharedAway);
  for (const stone of stones) grid.add(stone.placed.at, stone);
  return (at, far) =>
    grid.near(at).every((stone) => {
      const [x, y] = stone.local(at);
      return stone.away(x, y) > far - SLACK;
    });
}
