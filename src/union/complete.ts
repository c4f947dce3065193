/**
 * Mirror images of a united unit, by index: images share the points of the plane between them, so no gap can open.
 */
import { addImage } from "../mesh/add-image.js";
import type { Clipped } from "../mesh/clip.js";
import { END, START, type TurnPart } from "../mesh/turn-round.js";

/** Bit of the points on the middle plane, beside those of a unit's start and end. */
export const MIDDLE = 4;

/** A unit and its mirror image in the plane z = 0. */
export function mirrorMiddle(unit: Clipped): Clipped {
  return addImage(unit, MIDDLE, (x, y, z) => [x, y, -z]).whole;
}

/** Half a unit and its mirror image in the plane at its end. */
export function mirrorEnd(half: Clipped, end: number): TurnPart {
  const [cos, sin] = [Math.cos(2 * end), Math.sin(2 * end)];
  const { whole, imageOf } = addImage(half, END, (x, y, z) => [x * cos + y * sin, x * sin - y * cos, z]);
  const follows = new Int32Array(whole.marks.length).fill(-1);
  half.marks.forEach((mark, vertex) => {
    if ((mark & START) !== 0) follows[imageOf[vertex]] = vertex;
  });
  return { mesh: whole.mesh, follows };
}
