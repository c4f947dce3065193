/**
 * How much of what is round a seen point stands open, from the z-buffer alone (screen-space ambient occlusion).
 *
 * Places are tried in the half-space over the surface; those that lie behind the z-buffer, and not far behind it, count as
 * hidden. The pattern of tries repeats every 4 × 4 pixels and is averaged out again over pixels of the same surface.
 */
import type { PixelView } from "./pixel-view.js";

/** Tries a pixel; 4 × 4 pixels share an average, so 16 times as many count. */
const TRIES = 9;

/** Side of the repeating pattern, pixels. */
const PATTERN = 4;

/** How far off the surface tries begin, over the reach. */
const LIFT = 0.02;

/** 1 where open, down to 0 where closed in; `reach` in mm. */
export function openness(surface: PixelView, reach: number): Float32Array {
  const { width, height, depth, normal, focal } = surface;
  const open = new Float32Array(width * height).fill(1);
  const tries = spreadTries();
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = y * width + x;
      const own = depth[at];
      if (own === 0) continue;
      const nx = normal[3 * at];
      const ny = normal[3 * at + 1];
      const nz = normal[3 * at + 2];
      const px = ((x + 0.5 - width / 2) / focal) * own + nx * LIFT * reach;
      const py = ((height / 2 - y - 0.5) / focal) * own + ny * LIFT * reach;
      const pz = own + nz * LIFT * reach;
      const list = tries[(y % PATTERN) * PATTERN + (x % PATTERN)];
      let hidden = 0;
      let weights = 0;
      for (let t = 0; t < list.length; t += 4) {
        const along = list[t] * nx + list[t + 1] * ny + list[t + 2] * nz;
        // Turned to the surface's side; weighed by the cosine, so that grazing tries count little.
        const weight = Math.abs(along);
        const step = (along < 0 ? -reach : reach) * list[t + 3];
        weights += weight;
        const qz = pz + list[t + 2] * step;
        const scale = focal / qz;
        const qx = (width / 2 + (px + list[t] * step) * scale) | 0;
        const qy = (height / 2 - (py + list[t + 1] * step) * scale) | 0;
        if (qx < 0 || qy < 0 || qx >= width || qy >= height) continue;
        const there = depth[qy * width + qx];
        if (there === 0) continue;
        const behind = qz - there;
        if (behind > 0.01 * reach) hidden += weight * Math.min(1, (1.2 * reach) / behind) ** 2;
      }
      open[at] = 1 - hidden / weights;
    }
  }
  return averaged(open, surface, reach);
}

/** For each pixel of the pattern its tries, four numbers each: a direction spread over the sphere and a length up to 1. */
function spreadTries(): readonly Float64Array[] {
  const count = TRIES * PATTERN * PATTERN;
  const golden = Math.PI * (3 - Math.sqrt(5));
  const all = Array.from({ length: PATTERN * PATTERN }, (): number[] => []);
  for (let i = 0; i < count; i++) {
    const z = 1 - (2 * i + 1) / count;
    const level = Math.sqrt(1 - z * z);
    // The fractional parts of multiples of the plastic number's inverse: an even, repeatable spread of lengths.
    const length = 0.06 + 0.94 * ((i * 0.7548776662466927) % 1) ** 1.5;
    all[(i * 7) % (PATTERN * PATTERN)].push(level * Math.cos(i * golden), level * Math.sin(i * golden), z, length);
  }
  return all.map((numbers) => Float64Array.from(numbers));
}

/** Mean over the pattern's square round each pixel, of the pixels that lie on the same surface. */
function averaged(open: Float32Array, { width, height, depth }: PixelView, reach: number): Float32Array {
  const result = new Float32Array(open);
  for (let y = 1; y < height - PATTERN + 2; y++) {
    for (let x = 1; x < width - PATTERN + 2; x++) {
      const at = y * width + x;
      const own = depth[at];
      if (own === 0) continue;
      let sum = 0;
      let count = 0;
      for (let dy = -1; dy < PATTERN - 1; dy++) {
        for (let other = at + dy * width - 1; other < at + dy * width + PATTERN - 1; other++) {
          const there = depth[other];
          if (there === 0 || Math.abs(there - own) > 0.2 * reach) continue;
          sum += open[other];
          count++;
        }
      }
      result[at] = sum / count;
    }
  }
  return result;
}
