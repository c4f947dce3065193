/**
 * A shape grown or shrunk by a distance.
 */

import { AnnuletError } from "../../base/errors.js";
import { showLength } from "../../base/units.js";
import { OFFSET_DEFAULTS, type OffsetShape } from "../../design/shapes/offset.js";
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";
import { largestInset } from "../../flat/largest-inset.js";
import { type GridRegion, type Join, offset } from "../../flat/polygons.js";
import { requireRegion } from "./rules.js";
import type { ShapeFrame, ShapeNode } from "./shape-node.js";

export const offsetShape: ShapeNode<OffsetShape<ShapeSpec>> = {
  draw({ offset: distance, join = OFFSET_DEFAULTS.join, of }, frame) {
    const drawn = frame.draw(of, ".of");
    requireRegion(drawn, frame.place(".of"), "cannot be grown or shrunk: give the region a ribbon instead");
    frame.budget.spend(drawn.closed, frame.where);
    const moved = offsetBy(drawn.closed, distance, join, frame);
    if (moved.length === 0) throw nothingLeft(drawn.closed, distance, join, frame);
    return { closed: moved, open: [] };
  },
};

function offsetBy(region: GridRegion, distance: number, join: Join, { strip, tolerance }: ShapeFrame): GridRegion {
  const { scale } = strip.grid;
  return offset(region, distance * scale, join, tolerance * scale);
}

function nothingLeft(region: GridRegion, distance: number, join: Join, frame: ShapeFrame): AnnuletError {
  const by = (mm: number) => offsetBy(region, mm, join, frame);
  return new AnnuletError({
    code: "offset-too-large",
    message: `nothing of the shape lies ${showLength(-distance)} inside its outline`,
    path: frame.place(".offset"),
    value: distance,
    allowed: `at least -${showLength(largestInset(region, -distance, frame.strip.grid.scale, by))}`,
  });
}
