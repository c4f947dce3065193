/**
 * The soft shadow on the ground under an even sky.
 *
 * The mesh becomes a coarse grid of columns from its underside to its top. From a ground point a column hides, along
 * its compass direction, the sky between two heights; between the heights a and b lies the share sin² b − sin² a of
 * what an even sky sheds on the ground.
 */
import type { Mesh } from "../../../src/mesh/mesh.js";
import { TURN } from "../../../src/units.js";
import type { Camera } from "./camera.js";
import { cross, dot, smoothstep, type Vec } from "./vector.js";

/** Cells along the grid's side. */
const CELLS = 120;

/** Compass directions in which the sky is looked at. */
const DIRECTIONS = 32;

/** Grid's side in bounding radii of the mesh: the shadow has faded beyond. */
const SIDE = 4;

export interface Ground {
  /** Share of the sky seen from the ground's point below `point`, 0 to 1. */
  readonly skyAt: (point: Vec) => number;
  /** Height of the ground along the up axis, mm. */
  readonly level: number;
}

/** The ground under the mesh's lowest point, square to the camera's up axis. */
export function makeGround(mesh: Mesh, { up, right }: Camera, centre: Vec, radius: number): Ground {
  const ahead = cross(up, right);
  const cell = (SIDE * radius) / CELLS;
  const u0 = dot(centre, right) - (SIDE * radius) / 2;
  const v0 = dot(centre, ahead) - (SIDE * radius) / 2;
  const { columns, level } = makeColumns(mesh, up, right, ahead, u0, v0, cell);
  const sky = skyOverGround(columns, cell);
  const skyAt = (point: Vec): number => {
    const u = (dot(point, right) - u0) / cell - 0.5;
    const v = (dot(point, ahead) - v0) / cell - 0.5;
    const i = Math.floor(u);
    const j = Math.floor(v);
    if (i < 0 || j < 0 || i >= CELLS - 1 || j >= CELLS - 1) return 1;
    const fu = u - i;
    const fv = v - j;
    const at = j * CELLS + i;
    const near = sky[at] * (1 - fu) + sky[at + 1] * fu;
    const far = sky[at + CELLS] * (1 - fu) + sky[at + CELLS + 1] * fu;
    const share = near * (1 - fv) + far * fv;
    // Faded out before the grid ends, so that its border does not show.
    const away = Math.hypot(i - CELLS / 2, j - CELLS / 2) / (CELLS / 2);
    return 1 - (1 - share) * smoothstep(0.98, 0.45, away);
  };
  return { skyAt, level };
}

/** Heights over the ground of the mesh's underside and top in each cell; Infinity and 0 where nothing is above. */
interface Columns {
  readonly low: Float64Array;
  readonly high: Float64Array;
}

function makeColumns(mesh: Mesh, up: Vec, right: Vec, ahead: Vec, u0: number, v0: number, cell: number) {
  const { positions, triangles } = mesh;
  const count = positions.length / 3;
  const flat = new Float64Array(count * 3);
  let level = Number.POSITIVE_INFINITY;
  for (let i = 0; i < count * 3; i += 3) {
    const p: Vec = [positions[i], positions[i + 1], positions[i + 2]];
    flat[i] = (dot(p, right) - u0) / cell - 0.5;
    flat[i + 1] = (dot(p, ahead) - v0) / cell - 0.5;
    flat[i + 2] = dot(p, up);
    level = Math.min(level, flat[i + 2]);
  }
  const low = new Float64Array(CELLS * CELLS).fill(Number.POSITIVE_INFINITY);
  const high = new Float64Array(CELLS * CELLS);
  for (let face = 0; face < triangles.length; face += 3) {
    const a = triangles[face] * 3;
    const b = triangles[face + 1] * 3;
    const c = triangles[face + 2] * 3;
    const area = cross2(flat, a, b, flat[c], flat[c + 1]);
    if (area === 0) continue;
    const i1 = Math.min(CELLS - 1, Math.floor(Math.max(flat[a], flat[b], flat[c])));
    const j1 = Math.min(CELLS - 1, Math.floor(Math.max(flat[a + 1], flat[b + 1], flat[c + 1])));
    for (let j = Math.max(0, Math.ceil(Math.min(flat[a + 1], flat[b + 1], flat[c + 1]))); j <= j1; j++) {
      for (let i = Math.max(0, Math.ceil(Math.min(flat[a], flat[b], flat[c]))); i <= i1; i++) {
        const wa = cross2(flat, b, c, i, j) / area;
        const wb = cross2(flat, c, a, i, j) / area;
        if (wa < 0 || wb < 0 || wa + wb > 1) continue;
        const height = wa * flat[a + 2] + wb * flat[b + 2] + (1 - wa - wb) * flat[c + 2] - level;
        low[j * CELLS + i] = Math.min(low[j * CELLS + i], height);
        high[j * CELLS + i] = Math.max(high[j * CELLS + i], height);
      }
    }
  }
  return { columns: { low, high }, level };
}

function skyOverGround(columns: Columns, cell: number): Float32Array {
  const sky = new Float32Array(CELLS * CELLS);
  for (let j = 0; j < CELLS; j++) {
    for (let i = 0; i < CELLS; i++) {
      let hidden = 0;
      for (let k = 0; k < DIRECTIONS; k++) hidden += hiddenAlong(columns, cell, i, j, ((k + 0.5) * TURN) / DIRECTIONS);
      sky[j * CELLS + i] = 1 - hidden / DIRECTIONS;
    }
  }
  return blurred(sky);
}

/** Mean over 5 × 5 cells, which hides the grid and the few directions. */
function blurred(sky: Float32Array): Float32Array {
  return sky.map((_, at) => {
    let sum = 0;
    let count = 0;
    for (let j = Math.max(0, Math.floor(at / CELLS) - 2); j <= Math.min(CELLS - 1, Math.floor(at / CELLS) + 2); j++) {
      for (let i = Math.max(0, (at % CELLS) - 2); i <= Math.min(CELLS - 1, (at % CELLS) + 2); i++) {
        sum += sky[j * CELLS + i];
        count++;
      }
    }
    return sum / count;
  });
}

/** Share of the sky that columns hide from cell (i, j) in one compass direction. */
function hiddenAlong({ low, high }: Columns, cell: number, i: number, j: number, direction: number): number {
  const du = Math.cos(direction);
  const dv = Math.sin(direction);
  // One bit for each thirty-second of the sky that is hidden, from the ground up.
  let hidden = 0;
  for (let step = 0; step < CELLS; step++) {
    const u = Math.round(i + du * step);
    const v = Math.round(j + dv * step);
    if (u < 0 || v < 0 || u >= CELLS || v >= CELLS) break;
    const at = v * CELLS + u;
    if (high[at] === 0) continue;
    // Half a cell stands for the distance to what is overhead.
    const distance2 = (Math.max(step, 0.5) * cell) ** 2;
    const upper = Math.round((32 * high[at] ** 2) / (high[at] ** 2 + distance2));
    const lower = Math.round((32 * low[at] ** 2) / (low[at] ** 2 + distance2));
    hidden |= lowBits(upper) & ~lowBits(lower);
  }
  let count = 0;
  for (let bits = hidden; bits !== 0; bits &= bits - 1) count++;
  return count / 32;
}

function lowBits(count: number): number {
  return count >= 32 ? -1 : (1 << count) - 1;
}

/** Doubled area of the triangle (a, b, point) on the ground. */
function cross2(flat: Float64Array, a: number, b: number, x: number, y: number): number {
  return (flat[a] - x) * (flat[b + 1] - y) - (flat[a + 1] - y) * (flat[b] - x);
}
