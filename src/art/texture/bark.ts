/**
 * Bark: long plates of various heights, rounded off to the furrows between them.
 */
import { smoothStep } from "../../base/math/smooth-step.js";
import type { Nearby } from "./nearby.js";
import type { TextureForm } from "./texture-form.js";

/**
 * Width of the slope from a plate to a furrow, in widths of a cell. Chosen by eye, but no more than 0.37: the border to a
 * point that is not near may lie that near, half of 1.81 − 1.07 cells.
 */
const SLOPE = 0.35;

/** Height of the lowest plate, of the highest's. Chosen by eye. */
const LOWEST = 0.55;

export const bark: TextureForm = {
  height: ({ across, length }) => {
    const unit = across ? ([1, length] as const) : ([length, 1] as const);
    return (near) => {
      const own = nearest(near);
      return (LOWEST + (1 - LOWEST) * near.chance[own]) * smoothStep(toBorder(near, own, unit) / SLOPE);
    };
  },
};

function nearest({ count, x, y }: Nearby): number {
  let [own, least] = [0, Number.POSITIVE_INFINITY];
  for (let i = 0; i < count; i++) {
    const square = x[i] ** 2 + y[i] ** 2;
    if (square >= least) continue;
    [own, least] = [i, square];
  }
  return own;
}

/**
 * How far the nearest border of the cell is, in widths of a cell. The squares of the distances to two points differ by a
 * linear function of the place: over its slope it is the distance to where they are alike.
 *
 * @param unit widths of a cell in one cell along and across
 */
function toBorder({ count, x, y }: Nearby, own: number, unit: readonly [number, number]): number {
  const square = x[own] ** 2 + y[own] ** 2;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < count; i++) {
    if (i === own) continue;
    const slope = 2 * Math.sqrt(((x[i] - x[own]) / unit[0]) ** 2 + ((y[i] - y[own]) / unit[1]) ** 2);
    least = Math.min(least, (x[i] ** 2 + y[i] ** 2 - square) / slope);
  }
  return least;
}
