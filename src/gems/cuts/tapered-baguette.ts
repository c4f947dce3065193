/**
 * The tapered baguette: wide at −x, narrow at +x; one row of facets above the girdle, two below it.
 *
 * Its long sides are not parallel, so what lies below its first row is a roof: the long sides rise at one slope and meet in a
 * ridge that is deepest at the wide end, where the end's own facet begins at that slope too.
 */
import type { Point2 } from "../../base/math/point.js";
import { CannotClose } from "../cannot-close.js";
import type { Cut, StoneSize } from "../cut.js";
import { type Polyhedron, PolyhedronDraft } from "../polyhedron.js";
import { sidesOf } from "../rectangle.js";
import { addRow, PAVILION_ROWS } from "../step-cut.js";
import { heightsOf, type Proportions } from "../stone.js";
import { BAGUETTE_SOURCE, BAGUETTE_USUAL, BAGUETTE_WEIGHT } from "./baguette.js";

/** The narrow end where none is given, a share of the wide one: common practice, no source. */
export const USUAL_NARROW = 0.7;

/** A long side, y = half + slope x, and how much farther it moves along y than at right angles. */
interface Taper {
  readonly half: number;
  readonly slope: number;
  readonly stretch: number;
}

function taperOf({ length, width, narrow = USUAL_NARROW * width }: StoneSize): Taper {
  const slope = (narrow - width) / (2 * length);
  return { half: (width + narrow) / 4, slope, stretch: Math.hypot(1, slope) };
}

/** The outline moved in by so many mm on every side: counter-clockwise from the narrow end. */
function inset(size: StoneSize, by: number): Point2[] {
  const { half, slope, stretch } = taperOf(size);
  const end = size.length / 2 - by;
  const y = (x: number) => half + slope * x - by * stretch;
  return [
    [end, -y(end)],
    [end, y(end)],
    [-end, y(-end)],
    [-end, -y(-end)],
  ];
}

/** How far an end's side must move in until it meets the ridge: where both long sides have moved in as far. */
function reachOf(size: StoneSize, towards: 1 | -1): number {
  const { half, slope, stretch } = taperOf(size);
  // half + slope · towards (length / 2 − by) = by · stretch
  return (half + slope * towards * (size.length / 2)) / (stretch + slope * towards);
}

function taperedFacets(size: StoneSize, proportions: Proportions): Polyhedron {
  if (proportions.culet > 0) throw new CannotClose("a tapered baguette has a ridge below and no culet");
  const { crown, girdle, pavilion } = heightsOf({ width: size.width, proportions });
  const { narrow = USUAL_NARROW * size.width } = size;
  const draft = new PolyhedronDraft();
  const level = (by: number, z: number) => inset(size, by).map(([x, y]) => draft.point([x, y, z]));
  const upper = level(0, 0);
  const lower = level(0, -girdle);
  addRow(draft, "girdle", upper, lower);
  // The table's margin is a share of the narrow end, so that something is left of it there.
  const table = level(((1 - proportions.table) / 2) * narrow, crown);
  addRow(draft, "crown step", table, upper);
  draft.facet("table", table);
  const [wideReach, narrowReach] = [reachOf(size, -1), reachOf(size, 1)];
  const [{ inward, height }] = PAVILION_ROWS[2];
  const belly = inward * narrowReach;
  const bellyDepth = height * (narrowReach / wideReach) * pavilion;
  const steep = (pavilion - bellyDepth) / (wideReach - belly);
  const rim = level(belly, -girdle - bellyDepth);
  addRow(draft, "pavilion step", lower, rim);
  const ridge = (reach: number, towards: 1 | -1) =>
    draft.point([towards * (size.length / 2 - reach), 0, -girdle - bellyDepth - steep * (reach - belly)]);
  const [narrowNode, wideNode] = [ridge(narrowReach, 1), ridge(wideReach, -1)];
  draft.facet("pavilion step", [rim[0], narrowNode, rim[1]]);
  draft.facet("pavilion step", [rim[1], narrowNode, wideNode, rim[2]]);
  draft.facet("pavilion step", [rim[2], wideNode, rim[3]]);
  draft.facet("pavilion step", [rim[3], wideNode, narrowNode, rim[0]]);
  return draft;
}

export const taperedBaguette: Cut = {
  name: "tapered-baguette",
  title: "Tapered baguette",
  // 4 × 2 × 1.5 is a common size (common practice, no source); the limits are chosen.
  ratio: { least: 1.2, usual: 2, most: 5 },
  proportions: BAGUETTE_USUAL,
  proportionsSource: BAGUETTE_SOURCE,
  weight: BAGUETTE_WEIGHT,
  outline: (size) => ({ segments: sidesOf(inset(size, 0)), stretch: 1 }),
  facets: taperedFacets,
};
