/**
 * That no stone stands in another one, and which stand nearer to each other than is published as the least.
 *
 * Only stones whose surrounding balls meet are compared, so that the work grows with their number.
 */
import type { Problem } from "../base/errors.js";
import { convexDepth } from "../base/math/convex-depth.js";
import { convexDistance } from "../base/math/convex-distance.js";
import { PointGrid } from "../base/math/point-grid.js";
import { degrees, showLength } from "../base/units.js";
import type { Ground } from "./ground.js";
import { groupedBy } from "./grouped-by.js";
import type { PlacedStone } from "./placed-stone.js";
import { girdleBody, type StoneShape, type StoneShapes, wholeBody } from "./stone-shape.js";

/** Least clear gap between girdles, mm. */
const LEAST_GAP = 0.1;

/** Where that is from. */
const LEAST_GAP_SOURCE = 'gia.edu benchmark; stuller.com, "Techniques for channel setting"';

/** Stones that touch to rounding stand in each other no deeper than this, mm. */
const TOUCH = 1e-6;

export interface AllStones {
  readonly stones: readonly PlacedStone[];
  /** Names of their groups. */
  readonly names: readonly string[];
  readonly shapes: StoneShapes;
  readonly ground: Pick<Ground, "warn" | "band">;
}

/** Stones that stand beside each other. */
export interface StonePair {
  readonly a: PlacedStone;
  readonly b: PlacedStone;
  /** Clear gap between their girdles in space, mm. */
  readonly gap: number;
  /** How deep one stands in the other, mm; 0 where they do not. */
  readonly depth: number;
}

/** The pairs that stand in each other, as problems; warns of those that stand near. */
export function checkApart({ stones, names, shapes, ground }: AllStones): Problem[] {
  const pairs = nearPairs(stones, shapes);
  warnNear(
    pairs.filter(({ depth, gap }) => depth === 0 && gap < LEAST_GAP - TOUCH),
    names,
    ground,
  );
  const deep = pairs.filter(({ depth }) => depth > 0);
  return [...groupedBy(deep, groupsOf).values()].map((alike) => overlap(alike, names));
}

/** Which groups the stones of a pair are of. */
function groupsOf({ a, b }: StonePair): string {
  return `${Math.min(a.group, b.group)} ${Math.max(a.group, b.group)}`;
}

/** Every pair whose girdles are nearer than what is published as the least, and every one that stands in each other. */
export function nearPairs(stones: readonly PlacedStone[], shapes: StoneShapes): StonePair[] {
  const known = stones.map(({ stone }) => shapes.of(stone));
  const balls = known.map(ballOf);
  const widest = balls.reduce((most, ball) => Math.max(most, ball), 0);
  const grid = new PointGrid<number>(Math.max(2 * widest, LEAST_GAP) + LEAST_GAP);
  const pairs: StonePair[] = [];
  stones.forEach((b, j) => {
    for (const i of grid.near(b.at).toSorted((one, other) => one - other)) {
      const a = stones[i];
      const apart = Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1], a.at[2] - b.at[2]);
      if (apart - balls[i] - balls[j] >= LEAST_GAP) continue;
      const gap = convexDistance(girdleBody(known[i], a), girdleBody(known[j], b)).distance;
      const [one, other] = [wholeBody(known[i], a), wholeBody(known[j], b)];
      const deep = convexDistance(one, other).distance > 0 ? 0 : convexDepth(one, other);
      const depth = deep > TOUCH ? deep : 0;
      if (depth > 0 || gap < LEAST_GAP) pairs.push({ a, b, gap, depth });
    }
    grid.add(b.at, j);
  });
  return pairs;
}

/** Radius of the ball about a stone's origin that holds all of it. */
function ballOf({ points, reach }: StoneShape): number {
  return points.reduce((most, point) => Math.max(most, Math.hypot(...point)), reach);
}

/** A stone as messages name it: `stone 12 of "field", at 45.3°`. */
export function sayStone({ number, group, surface }: PlacedStone, names: readonly string[]): string {
  return `stone ${number} of "${names[group]}" at ${showAngle(surface.angle)}`;
}

/** θ in degrees, 0 up to 360. */
function showAngle(angle: number): string {
  const shown = Number(degrees(angle).toFixed(1));
  return `${Number((shown - 360 * Math.floor(shown / 360)).toFixed(1))}°`;
}

/** The deepest of the pairs of two groups, or of one. */
function overlap(pairs: readonly [StonePair, ...StonePair[]], names: readonly string[]): Problem {
  const { a, b, depth } = pairs.reduce((worst, pair) => (pair.depth > worst.depth + TOUCH ? pair : worst));
  const [one, other, by] = [sayStone(a, names), sayStone(b, names), showLength(Math.max(depth, LEAST_SHOWN))];
  return {
    code: "stones-overlap",
    message:
      pairs.length > 1
        ? `${one} and ${other} stand ${by} in each other, the deepest of ${pairs.length} pairs`
        : `${one} and ${other} stand ${by} in each other`,
    path: `stones[${b.group}].place`,
    value: Number(depth.toFixed(3)),
    allowed: `at least ${showLength(LEAST_GAP)} between them`,
    hint:
      a.group === b.group && a.row === undefined
        ? "an anchor beside a mirror or a two-fold centre of the tile stands in its own image: put it on that, or farther away"
        : "make them smaller, or place them farther apart",
  };
}

/** Least depth that is shown, mm. */
const LEAST_SHOWN = 0.001;

function warnNear(pairs: readonly StonePair[], names: readonly string[], { warn }: AllStones["ground"]): void {
  const byGroups = groupedBy(pairs, groupsOf);
  for (const near of byGroups.values()) {
    const nearest = near.reduce((least, pair) => (pair.gap < least.gap - TOUCH ? pair : least));
    const [one, other] = [sayStone(nearest.a, names), sayStone(nearest.b, names)];
    warn({
      code: "stones-close",
      message:
        near.length > 1
          ? `${one} and ${other} stand only ${showLength(nearest.gap)} apart, the nearest of ${near.length} pairs`
          : `${one} and ${other} stand only ${showLength(nearest.gap)} apart`,
      path: `stones[${nearest.b.group}].place`,
      value: Number(nearest.gap.toFixed(3)),
      allowed: `at least ${showLength(LEAST_GAP)} between girdles (${LEAST_GAP_SOURCE})`,
      hint: "leave a wider gap, or take fewer stones",
    });
  }
}
