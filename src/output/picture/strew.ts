/**
 * Strews points over a mesh so thick that no cell of a coarse grid that it passes through is missed by much.
 */
import type { Mesh } from "../../mesh/mesh.js";

/** Called with a point, the outward normal, and the area that the point stands for, mm². */
// biome-ignore lint/complexity/useMaxParams: numbers, since this is called for every point and objects would be made each time
export type Strewn = (x: number, y: number, z: number, nx: number, ny: number, nz: number, area: number) => void;

/** At least one point a triangle, and none further than about half of `spacing` from the next. */
export function strew({ positions, triangles }: Mesh, spacing: number, take: Strewn): void {
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t];
    const b = 3 * triangles[t + 1];
    const c = 3 * triangles[t + 2];
    const ax = positions[a];
    const ay = positions[a + 1];
    const az = positions[a + 2];
    const ux = positions[b] - ax;
    const uy = positions[b + 1] - ay;
    const uz = positions[b + 2] - az;
    const vx = positions[c] - ax;
    const vy = positions[c + 1] - ay;
    const vz = positions[c + 2] - az;
    const x = uy * vz - uz * vy;
    const y = uz * vx - ux * vz;
    const z = ux * vy - uy * vx;
    const doubled = Math.sqrt(x * x + y * y + z * z);
    if (!(doubled > 0)) continue;
    const u2 = ux * ux + uy * uy + uz * uz;
    const v2 = vx * vx + vy * vy + vz * vz;
    const w2 = (ux - vx) ** 2 + (uy - vy) ** 2 + (uz - vz) ** 2;
    // The triangle in rows × rows like triangles, a point in the middle of each.
    const rows = Math.max(1, Math.ceil(Math.sqrt(Math.max(u2, v2, w2)) / spacing));
    const share = 1 / (3 * rows);
    const area = doubled / (2 * rows * rows);
    const scale = 1 / doubled;
    for (let i = 0; i < rows; i++) {
      for (let k = 0; k < 2 * (rows - i) - 1; k++) {
        const turned = k & 1;
        const p = (3 * i + 1 + turned) * share;
        const q = (3 * (k >> 1) + 1 + turned) * share;
        take(ax + p * ux + q * vx, ay + p * uy + q * vy, az + p * uz + q * vz, x * scale, y * scale, z * scale, area);
      }
    }
  }
}
