/**
 * Which SVG files a design's pattern, bead runs and rows of stones name, and where.
 */
import { showPath } from "../base/errors/document-path.js";
import { regionLists } from "../design/areas.js";
import type { BeadRunSpec } from "../design/pattern/bead-run.js";
import type { PatternSpec } from "../design/pattern/pattern.js";
import type { StoneGroupSpec } from "../design/stones/stone-group.js";
import { type SvgName, svgNames } from "./shapes/svg-names.js";

/** Every name, in the order of the document. */
export function drawingNames(
  pattern: PatternSpec,
  runs: readonly BeadRunSpec[],
  stones: readonly Pick<StoneGroupSpec, "place">[] = [],
): SvgName[] {
  const { shapes = {} } = pattern;
  return [
    ...Object.entries(shapes).flatMap(([name, shape]) =>
      svgNames(shape, showPath(["pattern", "shapes", name]) as string),
    ),
    ...regionLists(pattern).flatMap(({ regions, where: owner }) =>
      regions.flatMap(({ svg, take, shape }, i) => {
        const where = `${owner}.regions[${i}]`;
        if (svg !== undefined) return [{ name: svg, take, where: `${where}.svg` }];
        return shape === undefined ? [] : svgNames(shape, `${where}.shape`);
      }),
    ),
    ...runs.flatMap(({ along }, i) => {
      return typeof along === "object" && "shape" in along ? svgNames(along.shape, `beads[${i}].along.shape`) : [];
    }),
    ...stones.flatMap(({ place }, i) => {
      const shape = place.form === "line" ? place.shape : undefined;
      return shape === undefined ? [] : svgNames(shape, `stones[${i}].place.shape`);
    }),
  ];
}
