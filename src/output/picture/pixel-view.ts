/**
 * What each pixel sees of the mesh: how far it is and which way it faces, for all that need not be worked out for every
 * sample.
 */
import type { Mesh } from "../../mesh/mesh.js";
import type { Camera } from "./camera.js";
import type { Seen } from "./raster.js";
import { weigh } from "./weigh.js";

export interface PixelView {
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** Pixels a unit of x/depth. */
  readonly focal: number;
  /** Depth along the view's axis, mm; 0 where nothing is seen. */
  readonly depth: Float32Array;
  /** Smooth unit normal along the screen's axes: right, above, into the picture. */
  readonly normal: Float32Array;
}

/** One sample of each pixel, the one nearest to its middle that sees something. */
export function pixelViewOf(
  mesh: Mesh,
  seen: Seen,
  { projected, normals, camera, supersample }: PixelViewOptions,
): PixelView {
  const width = camera.width / supersample;
  const height = camera.height / supersample;
  const depth = new Float32Array(width * height);
  const normal = new Float32Array(3 * width * height);
  const { right, above, into } = camera;
  const weights = new Float64Array(3);
  const middle = supersample >> 1;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const sx = x * supersample + middle;
      const sy = y * supersample + middle;
      const sample = sy * camera.width + sx;
      const triangle = seen.triangle[sample];
      if (triangle < 0) continue;
      const at = y * width + x;
      depth[at] = 1 / seen.inverseDepth[sample];
      weigh(mesh.triangles, projected, triangle, sx, sy, weights);
      const n = 9 * triangle;
      const nx = weights[0] * normals[n] + weights[1] * normals[n + 3] + weights[2] * normals[n + 6];
      const ny = weights[0] * normals[n + 1] + weights[1] * normals[n + 4] + weights[2] * normals[n + 7];
      const nz = weights[0] * normals[n + 2] + weights[1] * normals[n + 5] + weights[2] * normals[n + 8];
      const scale = 1 / (Math.sqrt(nx * nx + ny * ny + nz * nz) || 1);
      normal[3 * at] = (nx * right[0] + ny * right[1] + nz * right[2]) * scale;
      normal[3 * at + 1] = (nx * above[0] + ny * above[1] + nz * above[2]) * scale;
      normal[3 * at + 2] = (nx * into[0] + ny * into[1] + nz * into[2]) * scale;
    }
  }
  return { width, height, focal: camera.focal / supersample, depth, normal };
}

export interface PixelViewOptions {
  /** Of the vertices, as `projectPoints` gives them. */
  readonly projected: Float64Array;
  /** Of the corners, as `cornerNormals` gives them. */
  readonly normals: Float32Array;
  readonly camera: Camera;
  readonly supersample: number;
}
