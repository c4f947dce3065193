/**
 * The mesh of one stone.
 */
import { numberFrom, type OptionRules, requireOptions } from "../base/options.js";
import type { Mesh } from "../mesh/mesh.js";
import { findCut } from "./cuts/catalogue.js";
import { type Polyhedron, polyhedronMesh } from "./polyhedron.js";
import type { Stone } from "./stone.js";
import { stoneOf } from "./stone-of.js";

/** How finely a stone is made. */
export interface StoneMeshOptions {
  /** How far the girdle's facets, and a cabochon's, may lie inside the round outline, mm, 0.0005 to 0.2. Default 0.005. */
  readonly tolerance?: number | undefined;
}

/** Chosen: half of the design's default, since a girdle of 1.5 mm should not look like a nut. */
const TOLERANCE = 0.005;

const RULES: OptionRules<StoneMeshOptions> = { tolerance: numberFrom(0.0005, 0.2, "mm") };

/**
 * The facets of a stone as a closed convex mesh in its own coordinates: x along it, y across, the table up, z = 0 at the
 * girdle's upper edge.
 *
 * @throws AnnuletError as `stoneOf` for a stone that is none; `option-unknown`, `option-invalid`
 *
 * @example
 * const mesh = stoneMesh(stoneOf({ cut: "emerald", size: 7, width: 5 }));
 * console.log(measureMesh(mesh).volume); // 59.2 mm³
 */
export function stoneMesh(stone: Stone, options: StoneMeshOptions = {}): Mesh {
  requireOptions(options, RULES);
  return polyhedronMesh(stoneFacets(stone, options.tolerance));
}

/** The facets by name. */
export function stoneFacets(stone: Stone, tolerance = TOLERANCE): Polyhedron {
  requireOptions({ tolerance }, RULES);
  // A caller may have put it together by hand: held to what `stoneOf` asks, which also sees whether it closes.
  const { cut, length, width, narrow, proportions } = Object(stone) as Stone;
  const known = stoneOf({ cut, size: length, width, narrow, proportions });
  return findCut(known.cut).facets(known, known.proportions, tolerance);
}
