/**
 * The princess cut: a square with sharp corners. Below it facets fan out from each corner of the girdle to the middle line of
 * the sides, as chevrons; above it a triangle stands on each side, between two facets that reach from the corner to the table.
 *
 * Drawn over a square and stretched to the length.
 */
import type { Point2, Point3 } from "../../base/math/point.js";
import { CannotClose } from "../cannot-close.js";
import type { Cut } from "../cut.js";
import { type Polyhedron, PolyhedronDraft, stretchPolyhedron } from "../polyhedron.js";
import { rectangleCorners, sidesOf } from "../rectangle.js";
import { addRow } from "../step-cut.js";
import { heightsOf, type Proportions } from "../stone.js";
import { STEP_DIAMOND } from "./emerald.js";

/** Where the chevrons meet on a side's middle line: shares of the way in to the middle, and of the depth. Chosen. */
const CHEVRONS = [
  { inward: 0.24, depth: 0.36 },
  { inward: 0.58, depth: 0.7 },
] as const;

/** Where the crown's facets meet on a side's middle line: shares of the way in to the table, and of the height. Chosen. */
const STAR = { inward: 0.5, height: 0.6 } as const;

const SIDES = 4;

/** A place of the side at −y, turned to a side: `a` along it, `out` across. */
function onSide(side: number, a: number, out: number): Point2 {
  const turned: readonly Point2[] = [
    [a, -out],
    [out, a],
    [-a, out],
    [-out, -a],
  ];
  return turned[side];
}

function princessFacets(width: number, proportions: Proportions): Polyhedron {
  const { crown, girdle, pavilion } = heightsOf({ width, proportions });
  const half = width / 2;
  const draft = new PolyhedronDraft();
  const all = (a: number, out: number, z: number) =>
    Array.from({ length: SIDES }, (_, side) => draft.point([...onSide(side, a, out), z] satisfies Point3));
  const upper = all(-half, half, 0);
  const lower = all(-half, half, -girdle);
  const table = all(-half * proportions.table, half * proportions.table, crown);
  const stars = all(0, half * (1 - STAR.inward * (1 - proportions.table)), crown * STAR.height);
  draft.facet("table", table);
  addRow(draft, "girdle", upper, lower);
  for (let side = 0; side < SIDES; side++) {
    const next = (side + 1) % SIDES;
    draft.facet("star", [table[side], stars[side], table[next]]);
    draft.facet("crown side", [table[side], upper[side], stars[side]]);
    draft.facet("crown side", [table[next], stars[side], upper[next]]);
    draft.facet("upper half", [upper[side], upper[next], stars[side]]);
  }
  addChevrons(draft, { half, lower, top: -girdle, pavilion, culet: proportions.culet });
  return draft;
}

interface ChevronWork {
  readonly half: number;
  readonly lower: readonly number[];
  readonly top: number;
  readonly pavilion: number;
  readonly culet: number;
}

/** Fans from the corners; the last chevrons run to the point, or are cut off level by the culet. */
function addChevrons(draft: PolyhedronDraft, { half, lower, top, pavilion, culet }: ChevronWork): void {
  const last = CHEVRONS[CHEVRONS.length - 1];
  if (1 - culet <= last.depth) throw new CannotClose("the culet reaches above the last chevrons");
  // Depth of the point that the culet cuts off; the edges that run to it are cut at the same height.
  const point = pavilion / (1 - culet);
  const middles = CHEVRONS.map(({ inward, depth }) =>
    Array.from({ length: SIDES }, (_, side) =>
      draft.point([...onSide(side, 0, half * (1 - inward)), top - depth * point]),
    ),
  );
  const at = (corner: number, drop: number) => {
    const [x, y] = draft.points[corner];
    const share = (1 - culet - drop) / (1 - drop);
    return draft.point([x * (1 - share), y * (1 - share), top - pavilion]);
  };
  const tip = culet === 0 ? draft.point([0, 0, top - pavilion]) : undefined;
  const ends = lower.map((corner) => tip ?? at(corner, 0));
  const ridges = middles[CHEVRONS.length - 1].map((corner) => tip ?? at(corner, last.depth));
  for (let side = 0; side < SIDES; side++) {
    const next = (side + 1) % SIDES;
    draft.facet("chevron", [lower[side], middles[0][side], lower[next]]);
    for (let row = 1; row < CHEVRONS.length; row++) {
      const [above, below] = [middles[row - 1][side], middles[row][side]];
      draft.facet("chevron", [lower[side], below, above]);
      draft.facet("chevron", [lower[next], above, below]);
    }
    const deepest = middles[CHEVRONS.length - 1][side];
    draft.facet("chevron", [lower[side], ends[side], ridges[side], deepest]);
    draft.facet("chevron", [lower[next], deepest, ridges[side], ends[next]]);
  }
  if (tip === undefined) draft.facet("culet", ends.flatMap((end, side) => [end, ridges[side]]).reverse());
}

export const princess: Cut = {
  name: "princess",
  title: "Princess",
  // The limits are chosen.
  ratio: { least: 1, usual: 1, most: 1.5 },
  proportions: { table: 0.7, crownHeight: 0.11, girdle: 0.03, pavilionDepth: 0.56, culet: 0 },
  proportionsSource: "common practice, no source; girdle as the round brilliant's",
  weight: {
    diamond: STEP_DIAMOND,
    coloured: {
      product: "area",
      factors: [[1, 0.0025]],
      source: "as a square: talk.jewelry thread 16956; dendritics.com has 0.0023",
      certainty: "weak",
    },
  },
  outline: ({ length, width }) => ({ segments: sidesOf(rectangleCorners({ length, width, corner: 0 })), stretch: 1 }),
  facets: ({ length, width }, proportions) => stretchPolyhedron(princessFacets(width, proportions), length / width),
};
