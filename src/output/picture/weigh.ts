/**
 * Where a sample lies within its triangle in space.
 */

/**
 * Writes the share of each corner of a triangle at a sample, as seen in perspective. Samples that lie outside by rounding,
 * as those that neighbours share may, are drawn to the nearest side.
 */
// biome-ignore lint/complexity/useMaxParams: numbers, since this is called for every sample and objects would be made each time
export function weigh(
  triangles: Uint32Array,
  projected: Float64Array,
  triangle: number,
  x: number,
  y: number,
  out: Float64Array,
): void {
  const a = 3 * triangles[3 * triangle];
  const b = 3 * triangles[3 * triangle + 1];
  const c = 3 * triangles[3 * triangle + 2];
  const ax = projected[a] - x;
  const ay = projected[a + 1] - y;
  const bx = projected[b] - x;
  const by = projected[b + 1] - y;
  const cx = projected[c] - x;
  const cy = projected[c + 1] - y;
  // Of the triangle's negative area on the screen; all of them positive for one that faces away.
  const sign = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax) < 0 ? -1 : 1;
  const wa = Math.max(0, sign * (bx * cy - by * cx)) * projected[a + 2];
  const wb = Math.max(0, sign * (cx * ay - cy * ax)) * projected[b + 2];
  const wc = Math.max(0, sign * (ax * by - ay * bx)) * projected[c + 2];
  const sum = wa + wb + wc;
  if (sum > 0) {
    out[0] = wa / sum;
    out[1] = wb / sum;
    out[2] = wc / sum;
  } else out.fill(1 / 3);
}
