/** Shapes read and drawn for tests. */

import type { DrawnPaths } from "../../../src/art/read-art.js";
import { type DrawerOptions, ShapeDrawer } from "../../../src/art/shapes/draw-shape.js";
import { shapeSchema } from "../../../src/design/shapes/shape.js";
import { areaOf, collector, type StripInput, stripOf } from "../../flat/strips.js";

export interface DrawInput extends StripInput, Omit<DrawerOptions, "warn"> {
  readonly unit?: "tile" | "mm";
}

/** A shape drawn in a tile 6 mm wide unless said otherwise; areas in mm². */
export function drawShape(
  spec: object,
  { unit = "tile", named, drawings, ...input }: DrawInput = {},
): {
  readonly drawn: DrawnPaths;
  readonly area: number;
  readonly codes: readonly string[];
} {
  const strip = stripOf(input);
  const { codes, warn } = collector();
  const drawer = new ShapeDrawer(strip, { named, drawings, warn });
  const place = { unit, tolerance: strip.artTolerance, where: "shape" };
  const drawn = drawer.draw(shapeSchema.parse(spec), place);
  return { drawn, area: areaOf(strip, drawn.closed), codes };
}

/** An upright rectangle as path data. */
export function box(left: number, right: number, low: number, high: number): string {
  return `M ${left} ${low} H ${right} V ${high} H ${left} Z`;
}
