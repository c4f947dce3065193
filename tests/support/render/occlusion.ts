/**
 * How much of the sky each seen point misses because of what stands near it, from the z-buffer alone.
 *
 * Points are tried in the hemisphere over the surface; those that lie behind the z-buffer, and not far behind it, count
 * as hidden (screen-space ambient occlusion). The pattern of tries repeats every 4 × 4 pixels and is averaged out again.
 */
import type { Camera } from "./camera.js";
import { FRONT, type Raster } from "./raster.js";
import { dot, type Vec } from "./vector.js";

/** Tries a pixel; 4 × 4 pixels share an average, so 16 times as many count. */
const TRIES = 12;

/** Side of the repeating pattern, pixels. */
const PATTERN = 4;

/** 1 where open, down to 0 where closed in; `reach` in mm. */
export function openness(raster: Raster, camera: Camera, reach: number): Float32Array {
  const { width, height } = camera;
  const open = new Float32Array(width * height).fill(1);
  const tries = hemisphereTries();
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = y * width + x;
      if (raster.side[at] !== FRONT) continue;
      open[at] = opennessAt(raster, camera, x, y, reach, tries[(y % PATTERN) * PATTERN + (x % PATTERN)]);
    }
  }
  return averaged(open, raster, width, height, reach);
}

function opennessAt(raster: Raster, camera: Camera, x: number, y: number, reach: number, tries: Float64Array) {
  const { width, height, focal } = camera;
  const at = y * width + x;
  const depth = 1 / raster.inverseDepth[at];
  const worldNormal: Vec = [raster.normal[at * 3], raster.normal[at * 3 + 1], raster.normal[at * 3 + 2]];
  const length = Math.sqrt(dot(worldNormal, worldNormal)) || 1;
  const nx = dot(worldNormal, camera.right) / length;
  const ny = dot(worldNormal, camera.above) / length;
  const nz = dot(worldNormal, camera.into) / length;
  const px = ((x + 0.5 - width / 2) / focal) * depth + nx * 0.02 * reach;
  const py = ((height / 2 - y - 0.5) / focal) * depth + ny * 0.02 * reach;
  const pz = depth + nz * 0.02 * reach;
  let hidden = 0;
  let weights = 0;
  for (let t = 0; t < tries.length; t += 4) {
    const along = tries[t] * nx + tries[t + 1] * ny + tries[t + 2] * nz;
    // Turned to the surface's side; weight by the cosine so that grazing tries count little.
    const weight = Math.abs(along);
    const step = (along < 0 ? -reach : reach) * tries[t + 3];
    weights += weight;
    const qz = pz + tries[t + 2] * step;
    const qx = Math.round(width / 2 + ((px + tries[t] * step) * focal) / qz - 0.5);
    const qy = Math.round(height / 2 - ((py + tries[t + 1] * step) * focal) / qz - 0.5);
    if (qx < 0 || qy < 0 || qx >= width || qy >= height) continue;
    const inverse = raster.inverseDepth[qy * width + qx];
    if (inverse === 0) continue;
    const behind = qz - 1 / inverse;
    if (behind > 0.01 * reach) hidden += weight * Math.min(1, (1.2 * reach) / behind) ** 2;
  }
  return 1 - hidden / weights;
}

/** For each pixel of the pattern its tries, four numbers each: a direction spread over the sphere and a length up to 1. */
function hemisphereTries(): readonly Float64Array[] {
  const count = TRIES * PATTERN * PATTERN;
  const golden = Math.PI * (3 - Math.sqrt(5));
  const all = Array.from({ length: PATTERN * PATTERN }, (): number[] => []);
  for (let i = 0; i < count; i++) {
    const z = 1 - (2 * i + 1) / count;
    const level = Math.sqrt(1 - z * z);
    // The fractional parts of multiples of the plastic number's inverse: an even, repeatable spread of lengths.
    const length = 0.06 + 0.94 * ((i * 0.7548776662466927) % 1) ** 1.5;
    const cell = (i * 7) % (PATTERN * PATTERN);
    all[cell].push(level * Math.cos(i * golden), level * Math.sin(i * golden), z, length);
  }
  return all.map((numbers) => Float64Array.from(numbers));
}

/** Mean over the pattern's square around each pixel, of the pixels that lie on the same surface. */
function averaged(open: Float32Array, { side, inverseDepth }: Raster, width: number, height: number, reach: number) {
  const result = new Float32Array(open);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = y * width + x;
      if (side[at] !== FRONT) continue;
      const depth = 1 / inverseDepth[at];
      let sum = 0;
      let count = 0;
      for (let dy = -1; dy < PATTERN - 1; dy++) {
        for (let dx = -1; dx < PATTERN - 1; dx++) {
          const other = at + dy * width + dx;
          if (y + dy < 0 || y + dy >= height || x + dx < 0 || x + dx >= width || side[other] !== FRONT) continue;
          if (Math.abs(1 / inverseDepth[other] - depth) > 0.2 * reach) continue;
          sum += open[other];
          count++;
        }
      }
      result[at] = sum / count;
    }
  }
  return result;
}
