/**
 * What is cut away between two hollows that come so near to each other that a leaf of metal would be left between them.
 */
import type { Point2 } from "../../base/math/point.js";
import type { Mesh } from "../../mesh/mesh.js";
import type { Frame } from "../frame.js";
import { layInSpace } from "./frame.js";
import { ROOM } from "./hollow.js";
import { frameBetween, outlineIn, pairsWithin, type StandingStone } from "./neighbours.js";
import { stackOutlines } from "./stacked.js";

/** A leaf between two hollows thinner than this is cut away, mm (chosen: no casting fills it, and no rule asks for less). */
const LEAST_LEAF = 0.1;

/** A link goes on so far into the hollows on both sides, mm (chosen). */
const INTO_HOLLOW = 0.04;

/** Places across at which two hollows are compared (chosen: 0.02 mm on a stone 1.5 mm wide). */
const PLACES = 64;

export interface LinkOptions {
  /** Height of the bearing's upper edge, mm, and above everything. */
  readonly edge: number;
  readonly above: number;
  readonly tolerance: number;
}

/** Two stones whose hollows come too near: where, and how far across. */
export interface Link {
  readonly frame: Frame;
  readonly stones: readonly [number, number];
  /** From y to y in that frame, mm. */
  readonly across: readonly [from: number, to: number];
  /** x of the middle between both hollows where they are nearest: 0 where they are alike. */
  readonly middle: number;
}

/** The links of a group. */
export function linksOf(stones: readonly StandingStone[], tolerance: number): Link[] {
  return pairsWithin(stones, ROOM + LEAST_LEAF).flatMap((pair): Link[] => {
    const frame = frameBetween(stones, pair);
    if (frame === undefined) return [];
    const [a, b] = pair.map((i) => outlineIn(frame, stones[i], ROOM, tolerance));
    const near = nearPlaces(a, b);
    return near === undefined ? [] : [{ frame, stones: pair, ...near }];
  });
}

/** Middles between alike hollows are 0 but for rounding, mm. */
const IN_THE_MIDDLE = 1e-9;

/** From where to where across two outlines, the first one at −x, leave less than a leaf between them, and where it is thinnest. */
function nearPlaces(a: readonly Point2[], b: readonly Point2[]): Pick<Link, "across" | "middle"> | undefined {
  const ys = (outline: readonly Point2[]) => outline.map(([, y]) => y);
  const [low, high] = [
    Math.max(Math.min(...ys(a)), Math.min(...ys(b))),
    Math.min(Math.max(...ys(a)), Math.max(...ys(b))),
  ];
  const near: number[] = [];
  let [least, middle] = [LEAST_LEAF, 0];
  for (let i = 0; i <= PLACES; i++) {
    const y = low + ((high - low) * i) / PLACES;
    const [from, to] = [crossing(a, y, "most"), crossing(b, y, "least")];
    if (to - from >= LEAST_LEAF) continue;
    near.push(y);
    if (to - from < least) [least, middle] = [to - from, (from + to) / 2];
  }
  if (near.length < 2) return undefined;
  return {
    across: [near[0], near[near.length - 1]],
    middle: Math.abs(middle) < IN_THE_MIDDLE ? 0 : middle,
  };
}

/** x at which a line across meets an outline, the least or the most. */
function crossing(outline: readonly Point2[], y: number, which: "least" | "most"): number {
  let found = which === "least" ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
  let [ax, ay] = outline[outline.length - 1];
  for (const [bx, by] of outline) {
    if (ay <= y !== by <= y) {
      const x = ax + ((y - ay) / (by - ay)) * (bx - ax);
      found = which === "least" ? Math.min(found, x) : Math.max(found, x);
    }
    [ax, ay] = [bx, by];
  }
  return found;
}

export function linkMesh({ frame, across: [from, to], middle }: Link, { edge, above }: LinkOptions): Mesh {
  const half = LEAST_LEAF / 2 + INTO_HOLLOW;
  const outline: Point2[] = [
    [middle - half, from],
    [middle + half, from],
    [middle + half, to],
    [middle - half, to],
  ];
  return layInSpace(
    stackOutlines([
      { z: edge, outline },
      { z: above, outline },
    ]),
    frame,
  );
}
