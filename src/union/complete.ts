/**
 * Images of a united unit, by index: mirror images share the points of the plane between them, so no gap can open; what is
 * turned over is joined along it.
 */
import type { Pausing } from "../base/pausing.js";
import { addingHalfTurn } from "../mesh/add-half-turn.js";
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

/**
 * Half a unit and its image under the half turn about the line from the finger axis through its end, in pieces.
 *
 * @throws AnnuletError `border-tangled`, `seam-mismatch`
 */
export function* turningOver(half: Clipped, end: number): Pausing<Clipped> {
  const [cos, sin] = [Math.cos(2 * end), Math.sin(2 * end)];
  return yield* addingHalfTurn(half, {
    bit: END,
    image: (x, y, z) => [x * cos + y * sin, x * sin - y * cos, -z],
    marksOfImage: (marks) => ((marks & START) === 0 ? marks : (marks & ~START) | END),
  });
}
