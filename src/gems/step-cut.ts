/**
 * Step cuts: rows of facets, each between two level outlines whose sides are parallel, so that every facet is plane. Rows are
 * steepest at the girdle. The last row runs to a keel, to a point or to the culet.
 */
import type { Point2 } from "../base/math/point.js";
import { type FacetName, type Polyhedron, PolyhedronDraft } from "./polyhedron.js";
import { heightsOf, type Proportions } from "./stone.js";

/** Where a row ends, seen from the girdle: shares of the way in to the table, keel or culet, and of the height. */
export interface Row {
  readonly inward: number;
  readonly height: number;
}

/** Rows of a crown or pavilion; chosen: steeper by the girdle as stones are cut, the mean angle is that of the proportions. */
export const CROWN_ROWS: Readonly<Record<1 | 2 | 3, readonly Row[]>> = {
  1: [{ inward: 1, height: 1 }],
  2: [
    { inward: 0.45, height: 0.55 },
    { inward: 1, height: 1 },
  ],
  3: [
    { inward: 0.28, height: 0.36 },
    { inward: 0.61, height: 0.7 },
    { inward: 1, height: 1 },
  ],
};

/** As those of the crown, with more difference between the rows, which gives a pavilion its belly; chosen. */
export const PAVILION_ROWS: Readonly<Record<1 | 2 | 3, readonly Row[]>> = {
  1: [{ inward: 1, height: 1 }],
  2: [
    { inward: 0.42, height: 0.5 },
    { inward: 1, height: 1 },
  ],
  3: [
    { inward: 0.2, height: 0.32 },
    { inward: 0.52, height: 0.67 },
    { inward: 1, height: 1 },
  ],
};

/** What a step cut is drawn from. */
export interface StepPlan {
  /** Across, mm. */
  readonly width: number;
  /** The outline moved in by so many mm, counter-clockwise, always with as many corners: those of a keel coincide. */
  readonly inset: (by: number) => readonly Point2[];
  readonly crown: readonly Row[];
  readonly pavilion: readonly Row[];
}

/** The facets of a step cut. */
export function stepCut(plan: StepPlan, proportions: Proportions): Polyhedron {
  const { width, inset } = plan;
  const { crown, girdle, pavilion } = heightsOf({ width, proportions });
  const draft = new PolyhedronDraft();
  const level = (by: number, z: number) => addLevel(draft, inset(by), z);
  const upper = level(0, 0);
  const lower = level(0, -girdle);
  addRow(draft, "girdle", upper, lower);
  let outer = upper;
  for (const { inward, height } of plan.crown) {
    const inner = level(((1 - proportions.table) / 2) * width * inward, crown * height);
    addRow(draft, "crown step", inner, outer);
    outer = inner;
  }
  draft.facet("table", outer);
  outer = lower;
  for (const { inward, height } of plan.pavilion) {
    const inner = level(((1 - proportions.culet) / 2) * width * inward, -girdle - pavilion * height);
    addRow(draft, "pavilion step", outer, inner);
    outer = inner;
  }
  if (proportions.culet > 0) draft.facet("culet", [...outer].reverse());
  return draft;
}

/** Corners at one height; those that coincide with the one before are the same point. */
function addLevel(draft: PolyhedronDraft, corners: readonly Point2[], z: number): readonly number[] {
  const known = new Map<string, number>();
  return corners.map(([x, y]) => {
    // The corners of a keel come out of the same sums, so they are equal to the last bit, but for the sign of 0.
    const key = `${x + 0},${y + 0}`;
    const index = known.get(key) ?? draft.point([x, y, z]);
    known.set(key, index);
    return index;
  });
}

/** The facets between a level and the one below it. */
export function addRow(
  draft: PolyhedronDraft,
  name: FacetName,
  above: readonly number[],
  below: readonly number[],
): void {
  above.forEach((corner, i) => {
    const j = (i + 1) % above.length;
    draft.facet(name, [corner, below[i], below[j], above[j]]);
  });
}
