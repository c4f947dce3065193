/**
 * The cabochon: half an ellipsoid over a flat base, round or oval, smooth within the tolerance.
 */
import { chordCount } from "../../base/math/curve.js";
import type { Cut } from "../cut.js";
import { type Polyhedron, PolyhedronDraft, stretchPolyhedron } from "../polyhedron.js";
import { addRow } from "../step-cut.js";
import { heightsOf, type Proportions } from "../stone.js";
import { circleGirdle } from "./round.js";

/** Sides round it at the least, and rows up to its top. Chosen. */
const LEAST_SIDES = 16;
const LEAST_ROWS = 4;

function domeFacets(width: number, proportions: Proportions, tolerance: number): Polyhedron {
  const { crown, girdle } = heightsOf({ width, proportions });
  const half = width / 2;
  const sides = Math.max(LEAST_SIDES, 4 * Math.ceil(chordCount(half, 2 * Math.PI, tolerance) / 4));
  // A circle of the larger half axis, stretched into the ellipse, keeps its chords at least as close.
  const rows = Math.max(LEAST_ROWS, chordCount(Math.max(half, crown), Math.PI / 2, tolerance));
  const draft = new PolyhedronDraft();
  const level = (radius: number, z: number) =>
    Array.from({ length: sides }, (_, i) => {
      const angle = (2 * Math.PI * i) / sides;
      return draft.point([radius * Math.cos(angle), radius * Math.sin(angle), z]);
    });
  const rim = level(half, 0);
  const base = level(half, -girdle);
  addRow(draft, "girdle", rim, base);
  draft.facet("base", [...base].reverse());
  let outer = rim;
  for (let row = 1; row < rows; row++) {
    const rise = (Math.PI / 2) * (row / rows);
    const inner = level(half * Math.cos(rise), crown * Math.sin(rise));
    addRow(draft, "dome", inner, outer);
    outer = inner;
  }
  const top = draft.point([0, 0, crown]);
  addRow(draft, "dome", Array<number>(sides).fill(top), outer);
  return draft;
}

export const cabochon: Cut = {
  name: "cabochon",
  title: "Cabochon",
  // The limits are chosen.
  ratio: { least: 1, usual: 1, most: 3 },
  proportions: { table: 0, crownHeight: 0.4, girdle: 0.05, pavilionDepth: 0, culet: 0 },
  proportionsSource: "common practice, no source",
  weight: {
    coloured: {
      product: "area",
      factors: [[1, 0.0027]],
      source: "dendritics.com, standard formula",
      certainty: "one credible source",
    },
  },
  outline: ({ length, width }) => ({ segments: circleGirdle(width, 1).arcs, stretch: length / width }),
  facets: ({ length, width }, proportions, tolerance) =>
    stretchPolyhedron(domeFacets(width, proportions, tolerance / (length / width)), length / width),
};
