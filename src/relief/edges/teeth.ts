/** Teeth: straight from the outline to a point and back. */
import type { EdgeForm } from "./edge-form.js";

export const teethEdge: EdgeForm = {
  draw: ({ width, depth }) => [
    [0, 0],
    [width / 2, depth],
    [width, 0],
  ],
  // Chosen: a tip of 28°; sharper ones do not cast.
  deepest: (width) => 2 * width,
};
