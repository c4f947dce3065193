/**
 * The z-buffer: which triangle each pixel sees, whether from its front, with what normal and how far away.
 */
import type { Mesh } from "../../../src/mesh/mesh.js";

/** What a pixel sees. */
export const NOTHING = 0;
export const FRONT = 1;
export const BACK = 2;

export interface Raster {
  /** NOTHING, FRONT or BACK, a pixel. */
  readonly side: Uint8Array;
  /** One over the depth along the view's axis, 0 where nothing is seen. */
  readonly inverseDepth: Float32Array;
  /** Smooth normal, three numbers a pixel. */
  readonly normal: Float32Array;
}

/** `projected` holds pixel x, pixel y (downwards) and one over the depth of each vertex. */
export function rasterize(
  mesh: Mesh,
  projected: Float64Array,
  cornerNormals: Float32Array,
  width: number,
  height: number,
): Raster {
  const pixels = width * height;
  const side = new Uint8Array(pixels);
  const inverseDepth = new Float32Array(pixels);
  const normal = new Float32Array(pixels * 3);
  const { triangles } = mesh;
  for (let face = 0; face < triangles.length; face += 3) {
    const a = triangles[face] * 3;
    const b = triangles[face + 1] * 3;
    const c = triangles[face + 2] * 3;
    const ax = projected[a];
    const ay = projected[a + 1];
    const bx = projected[b];
    const by = projected[b + 1];
    const cx = projected[c];
    const cy = projected[c + 1];
    const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    if (area === 0) continue;
    // Screen y points down, so a triangle counter-clockwise in space has a negative area here.
    const facing = area < 0 ? FRONT : BACK;
    const x0 = Math.max(0, Math.ceil(Math.min(ax, bx, cx)));
    const x1 = Math.min(width - 1, Math.floor(Math.max(ax, bx, cx)));
    const y0 = Math.max(0, Math.ceil(Math.min(ay, by, cy)));
    const y1 = Math.min(height - 1, Math.floor(Math.max(ay, by, cy)));
    for (let y = y0; y <= y1; y++) {
      for (let x = x0; x <= x1; x++) {
        const wa = ((bx - x) * (cy - y) - (by - y) * (cx - x)) / area;
        const wb = ((cx - x) * (ay - y) - (cy - y) * (ax - x)) / area;
        const wc = 1 - wa - wb;
        if (wa < 0 || wb < 0 || wc < 0) continue;
        const za = wa * projected[a + 2];
        const zb = wb * projected[b + 2];
        const zc = wc * projected[c + 2];
        const depth = Math.fround(za + zb + zc);
        const at = y * width + x;
        const seen = inverseDepth[at];
        // On an outline front and back meet at one depth: the front is what is meant.
        if (depth < seen || (depth === seen && facing === BACK)) continue;
        inverseDepth[at] = depth;
        side[at] = facing;
        for (let k = 0; k < 3; k++) {
          const n = face * 3 + k;
          normal[at * 3 + k] = za * cornerNormals[n] + zb * cornerNormals[n + 3] + zc * cornerNormals[n + 6];
        }
      }
    }
  }
  return { side, inverseDepth, normal };
}
