/**
 * A bright cut: the metal beside bead-set stones cut away in a slope, from the girdles' upper edge up to a border.
 */
import type { Point2 } from "../../base/math/point.js";
import type { Mesh } from "../../mesh/mesh.js";
import { type GirdleShape, girdleBeside } from "./girdle-shape.js";
import { type Around, ROOM } from "./hollow.js";
import { stackOutlines } from "./stacked.js";

/** Section along a row whose stones reach so far across it, (y, z), counter-clockwise. `border`: width of the slope, mm. */
export function brightSection(
  half: number,
  border: number,
  { surface, above }: Pick<Around, "surface" | "above">,
): Point2[] {
  const floor = half + ROOM;
  const right: Point2[] = [
    [floor, 0],
    [floor + border, surface],
    [floor + border, above],
  ];
  return [...right, ...right.toReversed().map(([y, z]): Point2 => [-y, z])];
}

/** Round one stone; `flat`: how far the floor goes on beside it before the slope begins, so that grains stand there, mm. */
export function brightPlate(
  shape: GirdleShape,
  {
    border,
    flat,
    around,
    tolerance,
  }: {
    readonly border: number;
    readonly flat: number;
    readonly around: Around;
    readonly tolerance: number;
  },
): Mesh {
  const outline = (by: number) => girdleBeside(shape, ROOM + flat + by, tolerance, "hollow");
  return stackOutlines([
    { z: 0, outline: outline(0) },
    { z: around.surface, outline: outline(border) },
    { z: around.above, outline: outline(border) },
  ]);
}
