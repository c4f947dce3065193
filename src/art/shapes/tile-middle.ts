/** The middle of the tile, in the unit of a drawing. */
import type { Point2 } from "../../base/math/point.js";
import type { ShapeFrame } from "./shape-node.js";

export function tileMiddle({ strip, unit }: Pick<ShapeFrame, "strip" | "unit">): Point2 {
  return [unit === "mm" ? strip.tileWidth / 2 : 0.5, 0];
}
