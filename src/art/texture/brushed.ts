/**
 * Brushed: fine lines side by side and over each other, each running out at both ends.
 */
import type { TextureForm } from "./texture-form.js";

/** Half a line's length in cells: neighbours in a row overlap. Chosen by eye. */
const HALF_LENGTH = 0.9;

/** Half the width of the narrowest line and by how much the widest is wider, in cells; the depth of the faintest. By eye. */
const NARROWEST = 0.4;
const SPREAD = 0.4;
const FAINTEST = 0.3;

export const brushed: TextureForm = {
  height: ({ across }) => {
    return (near) => {
      const [along, beside] = across ? [near.y, near.x] : [near.x, near.y];
      let deepest = 0;
      for (let i = 0; i < near.count; i++) {
        const length = 1 - (along[i] / HALF_LENGTH) ** 2;
        const width = 1 - (beside[i] / (NARROWEST + SPREAD * near.chance[i])) ** 2;
        if (length <= 0 || width <= 0) continue;
        deepest = Math.max(deepest, (FAINTEST + (1 - FAINTEST) * near.chance[i]) * length * width);
      }
      return -deepest;
    };
  },
};
