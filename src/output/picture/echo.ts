/**
 * What metal mirrors of itself: rays through a coarse grid that holds, cell by cell, the area of the surface as a vector.
 *
 * A cell with area vector N covers the share −N · d / cell² of what passes through it in direction d; surfaces that face away
 * count nothing, so that a ray is not caught by the surface that it leaves.
 */
import { meshBounds } from "../../mesh/bounds.js";
import type { Mesh } from "../../mesh/mesh.js";
import { strew } from "./strew.js";

/** Cells along the longest side of the mesh's box. */
const CELLS = 80;

/** Empty cells round the box. */
const RIM = 2;

/** Steps of a ray over a cell. */
const STEP = 1;

/** Cells cover more than their area by this, so that no light leaks where a ray's steps happen to straddle a wall. */
const DENSE = 1.3;

/** The way that takes a ray one step along the axes at most. */
const DIAGONAL = 1 / Math.sqrt(3);

/** A ray goes on until this share of it is left. */
const LEFT = 0.04;

/** How far off the surface a ray begins, cells. */
const LIFT = 1;

export interface EchoGrid {
  readonly size: readonly [number, number, number];
  readonly low: readonly [number, number, number];
  /** mm */
  readonly cell: number;
  /** Area vectors over cell², three numbers a cell, x first. */
  readonly area: Float32Array;
  /** Steps along the axes from the box between a cell's middle and the next ones to the nearest box with surface at a corner. */
  readonly clear: Uint8Array;
}

export function makeEchoGrid(mesh: Mesh): EchoGrid {
  const { min, max } = meshBounds(mesh);
  const cell = Math.max(...min.map((low, k) => max[k] - low)) / CELLS;
  const low = min.map((value) => value - RIM * cell) as [number, number, number];
  const size = min.map((value, k) => Math.ceil((max[k] - value) / cell) + 2 * RIM + 1) as [number, number, number];
  const area = new Float32Array(3 * size[0] * size[1] * size[2]);
  const inverse = 1 / cell;
  // biome-ignore lint/complexity/useMaxParams: what `strew` calls
  strew(mesh, 0.7 * cell, (x, y, z, nx, ny, nz, share) => {
    const i = ((x - low[0]) * inverse) | 0;
    const j = ((y - low[1]) * inverse) | 0;
    const k = ((z - low[2]) * inverse) | 0;
    const at = 3 * ((k * size[1] + j) * size[0] + i);
    const scale = share * inverse * inverse;
    area[at] += nx * scale;
    area[at + 1] += ny * scale;
    area[at + 2] += nz * scale;
  });
  smoothen(area, size);
  return { size, low, cell, area, clear: clearance(area, size) };
}

/**
 * Follows a ray and tells what it meets.
 *
 * @param out share that is caught, and the normal of what catches it times that share
 */
// biome-ignore lint/complexity/useMaxParams: numbers, since this is called for every ray and objects would be made each time
// biome-ignore lint/complexity/noExcessiveLinesPerFunction: one loop whose numbers stay in variables of their own: in arrays they take three times as long
export function followRay(
  { size, low, cell, area, clear }: EchoGrid,
  x: number,
  y: number,
  z: number,
  dx: number,
  dy: number,
  dz: number,
  nx: number,
  ny: number,
  nz: number,
  out: Float64Array,
): void {
  const sx = size[0];
  const sy = size[1];
  const sz = size[2];
  const inverse = 1 / cell;
  // In cells, with whole numbers at their middles.
  let px = (x - low[0]) * inverse - 0.5 + LIFT * nx;
  let py = (y - low[1]) * inverse - 0.5 + LIFT * ny;
  let pz = (z - low[2]) * inverse - 0.5 + LIFT * nz;
  const line = 3 * sx;
  const sheet = line * sy;
  let left = 1;
  out[0] = 0;
  out[1] = 0;
  out[2] = 0;
  out[3] = 0;
  while (px >= 0 && py >= 0 && pz >= 0 && px < sx - 1 && py < sy - 1 && pz < sz - 1) {
    const i = px | 0;
    const j = py | 0;
    const k = pz | 0;
    const box = (k * sy + j) * sx + i;
    const free = clear[box];
    if (free > 0) {
      const jump = Math.max(STEP, (free - 1) * DIAGONAL);
      px += dx * jump;
      py += dy * jump;
      pz += dz * jump;
      continue;
    }
    const at = 3 * box;
    const fx = px - i;
    const fy = py - j;
    const fz = pz - k;
    const gx = 1 - fx;
    const gy = 1 - fy;
    const gz = 1 - fz;
    const a = gx * gy * gz;
    const b = fx * gy * gz;
    const c = gx * fy * gz;
    const d = fx * fy * gz;
    const e = gx * gy * fz;
    const f = fx * gy * fz;
    const g = gx * fy * fz;
    const h = fx * fy * fz;
    const up = at + line;
    const far = at + sheet;
    const both = far + line;
    const ax =
      a * area[at] +
      b * area[at + 3] +
      c * area[up] +
      d * area[up + 3] +
      e * area[far] +
      f * area[far + 3] +
      g * area[both] +
      h * area[both + 3];
    const ay =
      a * area[at + 1] +
      b * area[at + 4] +
      c * area[up + 1] +
      d * area[up + 4] +
      e * area[far + 1] +
      f * area[far + 4] +
      g * area[both + 1] +
      h * area[both + 4];
    const az =
      a * area[at + 2] +
      b * area[at + 5] +
      c * area[up + 2] +
      d * area[up + 5] +
      e * area[far + 2] +
      f * area[far + 5] +
      g * area[both + 2] +
      h * area[both + 5];
    const facing = -(ax * dx + ay * dy + az * dz);
    if (facing > 0) {
      const caught = Math.min(left, facing * STEP * DENSE);
      const scale = caught / Math.sqrt(ax * ax + ay * ay + az * az);
      out[0] += caught;
      out[1] += ax * scale;
      out[2] += ay * scale;
      out[3] += az * scale;
      left -= caught;
      if (left < LEFT) {
        out[0] = 1;
        return;
      }
    }
    px += dx * STEP;
    py += dy * STEP;
    pz += dz * STEP;
  }
}

/** Spreads each cell over its neighbours, ¼ ½ ¼ along each axis, so that steps of the grid do not show. */
function smoothen(area: Float32Array, [sx, sy]: readonly [number, number, number]): void {
  const strides = [3, 3 * sx, 3 * sx * sy];
  for (const stride of strides) {
    const before = area.slice();
    // Cells of the rim are empty, so what crosses from line to line is nothing.
    for (let at = stride; at < area.length - stride; at++) {
      area[at] = 0.5 * before[at] + 0.25 * (before[at - stride] + before[at + stride]);
    }
  }
}

/**
 * Steps along the axes to the nearest box with surface, up to 255: a sweep there and back along each axis in turn
 * (A. Rosenfeld, J. Pfaltz, J. ACM 13, 1966).
 */
function clearance(area: Float32Array, [sx, sy, sz]: readonly [number, number, number]): Uint8Array {
  const clear = new Uint8Array(sx * sy * sz).fill(255);
  for (let k = 0; k < sz; k++) {
    for (let j = 0; j < sy; j++) {
      for (let i = 0; i < sx; i++) {
        const at = 3 * ((k * sy + j) * sx + i);
        if (area[at] === 0 && area[at + 1] === 0 && area[at + 2] === 0) continue;
        // It is a corner of the boxes before it too.
        for (let n = 0; n < 8; n++) clear[((k - (n >> 2)) * sy + j - ((n >> 1) & 1)) * sx + i - (n & 1)] = 0;
      }
    }
  }
  sweep(clear, 1, sx);
  sweep(clear, sx, sy);
  sweep(clear, sx * sy, sz);
  return clear;
}

/** There and back along one axis. */
function sweep(clear: Uint8Array, stride: number, count: number): void {
  for (let start = 0; start < clear.length; start += stride * count) {
    for (let at = start + stride; at < start + stride * count; at++) {
      if (clear[at - stride] < clear[at]) clear[at] = clear[at - stride] + 1;
    }
    for (let at = start + stride * (count - 1) - 1; at >= start; at--) {
      if (clear[at + stride] < clear[at]) clear[at] = clear[at + stride] + 1;
    }
  }
}
