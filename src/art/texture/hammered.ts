/**
 * Hammered: round dents side by side, which meet in ridges. The lowest of paraboloids of one curvature, as a ball leaves
 * them, some struck deeper than others.
 */
import type { TextureForm } from "./texture-form.js";

/** How much higher a light blow's dent lies than a heavy one's, where a dent rises by 1 over a cell's length. Chosen by eye. */
const LIGHT_BLOW = 0.15;

export const hammered: TextureForm = {
  height: () => (near) => {
    let lowest = Number.POSITIVE_INFINITY;
    for (let i = 0; i < near.count; i++) {
      lowest = Math.min(lowest, near.x[i] ** 2 + near.y[i] ** 2 + LIGHT_BLOW * near.chance[i]);
    }
    return lowest;
  },
};
