/**
 * Stippled: round pits that keep apart in level ground.
 */
import type { TextureForm } from "./texture-form.js";

/** Radius of the smallest pit, and by how much the largest is larger, in cells. Chosen by eye. */
const SMALLEST = 0.34;
const SPREAD = 0.1;

/** Depth of the smallest pit, of the largest's. Chosen by eye. */
const SHALLOWEST = 0.7;

export const stippled: TextureForm = {
  height: () => (near) => {
    let deepest = 0;
    for (let i = 0; i < near.count; i++) {
      const radius = SMALLEST + SPREAD * near.chance[i];
      const depth = SHALLOWEST + (1 - SHALLOWEST) * near.chance[i];
      deepest = Math.max(deepest, depth * (1 - (near.x[i] ** 2 + near.y[i] ** 2) / radius ** 2));
    }
    return -deepest;
  },
};
