/** Square steps: out for the middle half of each place, in for the rest. */
import type { EdgeForm } from "./edge-form.js";

export const stepsEdge: EdgeForm = {
  draw: ({ width, depth }) => [
    [0, 0],
    [width / 4, 0],
    [width / 4, depth],
    [(3 * width) / 4, depth],
    [(3 * width) / 4, 0],
    [width, 0],
  ],
  // Chosen: no step stands out more than twice its own breadth.
  deepest: (width) => width,
};
