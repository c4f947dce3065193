/**
 * The z-buffer: which triangle each sample sees, and how far away. What it looks like is worked out afterwards, once for
 * each sample.
 */

export const NOTHING = -1;
export const BACK = -2;

/** What samples see. */
export interface Seen {
  /** Index of the triangle; where nothing is seen NOTHING, where a triangle is seen from behind BACK. */
  readonly triangle: Int32Array;
  /** One over the depth along the view's axis, 0 where nothing is seen. */
  readonly inverseDepth: Float32Array;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Samples that neighbours may both claim: rounding must leave no crack between them. */
const OVERLAP = 1e-6;

/**
 * @param projected sample x, sample y (downwards) and one over the depth of each vertex
 * @param backs whether triangles that face away are drawn too
 */
export function rasterize(
  triangles: Uint32Array,
  projected: Float64Array,
  { width, height }: Size,
  backs: boolean,
): Seen {
  const triangle = new Int32Array(width * height).fill(NOTHING);
  const inverseDepth = new Float32Array(width * height);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t];
    const b = 3 * triangles[t + 1];
    const c = 3 * triangles[t + 2];
    const ax = projected[a];
    const ay = projected[a + 1];
    const bx = projected[b];
    const by = projected[b + 1];
    const cx = projected[c];
    const cy = projected[c + 1];
    const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    // Screen y points down, so a triangle counter-clockwise in space has a negative area here.
    if (!(area < 0) && !(backs && area > 0)) continue;
    const top = Math.max(0, Math.ceil(Math.min(ay, by, cy) - OVERLAP));
    const bottom = Math.min(height - 1, Math.floor(Math.max(ay, by, cy) + OVERLAP));
    if (top > bottom || Math.max(ax, bx, cx) < 0 || Math.min(ax, bx, cx) > width - 1) continue;
    // Depth is linear over the screen as one over itself.
    const za = projected[a + 2];
    const zb = projected[b + 2] - za;
    const zc = projected[c + 2] - za;
    const dzdx = (zb * (cy - ay) - zc * (by - ay)) / area;
    const dzdy = (zc * (bx - ax) - zb * (cx - ax)) / area;
    const sab = (bx - ax) / (by - ay);
    const sbc = (cx - bx) / (cy - by);
    const sca = (ax - cx) / (ay - cy);
    const label = area < 0 ? t / 3 : BACK;
    for (let y = top; y <= bottom; y++) {
      let low = Number.POSITIVE_INFINITY;
      let high = Number.NEGATIVE_INFINITY;
      // Where the row crosses each side; level sides are met by their neighbours.
      if (ay !== by && y >= Math.min(ay, by) - OVERLAP && y <= Math.max(ay, by) + OVERLAP) {
        const x = ax + (y - ay) * sab;
        low = x;
        high = x;
      }
      if (by !== cy && y >= Math.min(by, cy) - OVERLAP && y <= Math.max(by, cy) + OVERLAP) {
        const x = bx + (y - by) * sbc;
        if (x < low) low = x;
        if (x > high) high = x;
      }
      if (cy !== ay && y >= Math.min(cy, ay) - OVERLAP && y <= Math.max(cy, ay) + OVERLAP) {
        const x = cx + (y - cy) * sca;
        if (x < low) low = x;
        if (x > high) high = x;
      }
      const from = Math.max(0, Math.ceil(low - OVERLAP));
      const to = Math.min(width - 1, Math.floor(high + OVERLAP));
      const rowDepth = za + (y - ay) * dzdy - ax * dzdx;
      const row = y * width;
      for (let x = from; x <= to; x++) {
        const depth = rowDepth + x * dzdx;
        // On an outline front and back meet at one depth: the front is what is meant.
        if (depth > inverseDepth[row + x] || (depth === inverseDepth[row + x] && triangle[row + x] === BACK)) {
          inverseDepth[row + x] = depth;
          triangle[row + x] = label;
        }
      }
    }
  }
  return { triangle, inverseDepth };
}
