/**
 * Welding: equal or near points become one vertex, and what collapses is left out.
 */
import { AnnuletError } from "../base/errors.js";
import { mergeEqualPoints, mixBits, tableSize } from "./merge.js";
import type { Mesh } from "./mesh.js";

export interface WeldOptions {
  /** Points at most this far apart become one, mm. 0 or more. Default 0: only equal points, bit for bit (−0 is 0). */
  readonly tolerance?: number;
}

/**
 * Merges points, drops triangles that thereby repeat a vertex, and drops vertices that no triangle uses.
 *
 * Above 0, a point joins the nearest earlier point that stands for itself and lies within the tolerance, so nothing
 * moves by more than the tolerance and the result depends on nothing but the order of the vertices. Two triangles that
 * come to lie on each other stay: the gate reports them.
 *
 * @throws AnnuletError `option-invalid` when the tolerance is negative or not finite
 */
export function weldMesh(mesh: Mesh, { tolerance = 0 }: WeldOptions = {}): Mesh {
  if (!(tolerance >= 0 && tolerance < Number.POSITIVE_INFINITY)) {
    throw new AnnuletError({
      code: "option-invalid",
      message: "the welding tolerance is not a length",
      path: "tolerance",
      value: tolerance,
      allowed: "0 or more, finite, in mm",
    });
  }
  const equal = mergeEqualPoints(mesh.positions);
  const near = tolerance === 0 ? undefined : mergeNearPoints(equal.positions, tolerance);
  const indexOf = near === undefined ? equal.indexOf : equal.indexOf.map((point) => near[point]);
  return compact(equal.positions, mesh.triangles, indexOf);
}

/** For each point the index of the point that stands for it. */
function mergeNearPoints(positions: Float64Array, tolerance: number): Uint32Array {
  const count = positions.length / 3;
  // Cells twice the tolerance wide: the ball round a point meets at most two cells along each axis.
  const cell = 2 * tolerance;
  const heads = new Int32Array(tableSize(count)).fill(-1);
  const mask = heads.length - 1;
  const next = new Int32Array(count).fill(-1);
  const standsFor = new Uint32Array(count);
  for (let point = 0; point < count; point++) {
    const [x, y, z] = [positions[3 * point], positions[3 * point + 1], positions[3 * point + 2]];
    let best = -1;
    let bestSquare = tolerance * tolerance;
    const [x0, x1] = [Math.floor((x - tolerance) / cell), Math.floor((x + tolerance) / cell)];
    const [y0, y1] = [Math.floor((y - tolerance) / cell), Math.floor((y + tolerance) / cell)];
    const [z0, z1] = [Math.floor((z - tolerance) / cell), Math.floor((z + tolerance) / cell)];
    for (let ix = x0; ix <= x1; ix++) {
      for (let iy = y0; iy <= y1; iy++) {
        for (let iz = z0; iz <= z1; iz++) {
          for (let other = heads[hashCell(ix, iy, iz) & mask]; other !== -1; other = next[other]) {
            const square =
              (positions[3 * other] - x) ** 2 +
              (positions[3 * other + 1] - y) ** 2 +
              (positions[3 * other + 2] - z) ** 2;
            if (square < bestSquare || (square === bestSquare && (best === -1 || other < best))) {
              best = other;
              bestSquare = square;
            }
          }
        }
      }
    }
    standsFor[point] = best === -1 ? point : best;
    if (best === -1) {
      const slot = hashCell(Math.floor(x / cell), Math.floor(y / cell), Math.floor(z / cell)) & mask;
      next[point] = heads[slot];
      heads[slot] = point;
    }
  }
  return standsFor;
}

function hashCell(ix: number, iy: number, iz: number): number {
  return mixBits((mixBits((mixBits(ix | 0) + iy) | 0) + iz) | 0);
}

function compact(positions: Float64Array, triangles: Uint32Array, indexOf: Uint32Array): Mesh {
  const newIndex = new Int32Array(positions.length / 3).fill(-1);
  const keptPositions = new Float64Array(positions.length);
  const keptTriangles = new Uint32Array(triangles.length);
  let vertices = 0;
  let length = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = indexOf[triangles[t]];
    const b = indexOf[triangles[t + 1]];
    const c = indexOf[triangles[t + 2]];
    if (a === b || b === c || c === a) continue;
    for (const vertex of [a, b, c]) {
      if (newIndex[vertex] === -1) {
        newIndex[vertex] = vertices;
        for (let k = 0; k < 3; k++) keptPositions[3 * vertices + k] = positions[3 * vertex + k];
        vertices++;
      }
      keptTriangles[length++] = newIndex[vertex];
    }
  }
  return { positions: keptPositions.slice(0, 3 * vertices), triangles: keptTriangles.slice(0, length) };
}
