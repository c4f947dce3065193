/**
 * Boxes about paths of the grid.
 */
import type { GridPath } from "./grid.js";

/** An upright box, grid steps. */
export interface GridBox {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** The box around a path's points; turned inside out where there are none. */
export function ringBox(ring: GridPath): GridBox {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of ring) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < low) low = y;
    if (y > high) high = y;
  }
  return { left, right, low, high };
}

/** The box's outline, counter-clockwise from its lower left corner. */
export function boxRing({ left, right, low, high }: GridBox): GridPath {
  return [
    { x: left, y: low },
    { x: right, y: low },
    { x: right, y: high },
    { x: left, y: high },
  ];
}
