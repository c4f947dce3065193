/**
 * Checks both forms of a mesh that is one unit and its turned images, exact and rounded, in the unit alone.
 *
 * What does not depend on where a triangle lies, its size and how it faces, is the unit's. Rounding moves a corner by at most
 * half a step of single precision along each axis: a triangle whose least height is more than twice that move keeps an
 * area however it is turned, and can have the smallest angle or the shortest edge only where it comes near to them in the
 * unit. Triangles for which that does not settle it are looked at in every image. Where anything is wrong nothing is said,
 * and the whole has to be read.
 */
import { areDistinctRounded, farthestOf, stepOf } from "../mesh/distinct-images.js";
import { firstUnit, imagesOf, OFF_IMAGE, type Turned } from "../mesh/turned.js";
import type { FormCheck } from "./check-form.js";
import { findThin } from "./thin.js";
import { readTurnedTopology } from "./turned-topology.js";

/** Both forms of a sound mesh. */
export interface TurnedForms {
  readonly exact: FormCheck;
  readonly float32: FormCheck;
}

/** What the whole mesh would be found to be, where it is one sound shell; otherwise undefined. */
export function checkTurnedForms(turned: Turned): TurnedForms | undefined {
  const topology = readTurnedTopology(turned);
  if (topology === undefined) return undefined;
  /** How far rounding moves a corner at most, mm; an image lies beside its place by far less. */
  const move = (Math.sqrt(3) / 2) * stepOf(farthestOf(turned)) * (1 + 1e-6) + OFF_IMAGE;
  const { volume, area, doubtful } = readUnit(turned, move);
  // Every point of the surface moves by less than that, so the rounded form's volume has the same sign.
  if (!(volume > 2 * move * area)) return undefined;
  if (areDistinctRounded(turned) !== true) return undefined;
  const { vertices, edges, triangles } = topology;
  const euler = vertices - edges + triangles;
  const form = (images: ReturnType<typeof imagesOf>): FormCheck | undefined => {
    const { flat, smallestAngle, shortestEdge } = findThin(images, new Uint8Array(images.triangles.length / 3));
    if (flat.length > 0) return undefined;
    return {
      closed: true,
      vertices,
      edges,
      triangles,
      components: 1,
      voids: 0,
      eulerCharacteristic: euler,
      genus: 1 - euler / 2,
      volume: turned.units * volume,
      smallestAngle,
      shortestEdge,
      faults: [],
    };
  };
  const exact = form(imagesOf(turned, doubtful));
  const float32 = form(imagesOf(turned, doubtful, Math.fround));
  return exact && float32 && { exact, float32 };
}

/** A triangle with a height of less than so many moves may lose its area: twice is what it can lose. */
const LOW = 4;

/** An arc sine is at most so many times its sine up to one half, which a side of four moves comes to: π/3. */
const ARC = Math.PI / 3;

/** Volume and surface of the unit, mm³ and mm², and the triangles that have to be looked at in every image. */
function readUnit(turned: Turned, move: number) {
  const { positions: p, triangles } = firstUnit(turned);
  const count = triangles.length / 3;
  /** Of each triangle the least that its smallest angle and its shortest edge can come to. */
  const leastAngle = new Float64Array(count);
  const leastEdge = new Float64Array(count);
  /** The most that the smallest angle and the shortest edge of all come to. */
  let [angleMost, edgeMost] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const low: number[] = [];
  let [volume, area] = [0, 0];
  for (let t = 0; t < count; t++) {
    const a = 3 * triangles[3 * t];
    const b = 3 * triangles[3 * t + 1];
    const c = 3 * triangles[3 * t + 2];
    const ax = p[a];
    const ay = p[a + 1];
    const az = p[a + 2];
    const ux = p[b] - ax;
    const uy = p[b + 1] - ay;
    const uz = p[b + 2] - az;
    const vx = p[c] - ax;
    const vy = p[c + 1] - ay;
    const vz = p[c + 2] - az;
    const wx = vx - ux;
    const wy = vy - uy;
    const wz = vz - uz;
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const cross = Math.sqrt(nx * nx + ny * ny + nz * nz);
    volume += ax * nx + ay * ny + az * nz;
    area += cross;
    const u = ux * ux + uy * uy + uz * uz;
    const v = vx * vx + vy * vy + vz * vz;
    const w = wx * wx + wy * wy + wz * wz;
    const shortest = Math.min(u, v, w);
    const longest = Math.max(u, v, w);
    const beside = u + v + w - 2 * shortest;
    const edge = Math.sqrt(shortest);
    const angle = Math.atan2(2 * cross, beside);
    // Each side turns by the arc sine of the moves of its ends over its length; beside the smallest angle are the longer two.
    leastAngle[t] = angle - (4 * move * ARC) / edge;
    leastEdge[t] = edge - 2 * move;
    edgeMost = Math.min(edgeMost, edge + 2 * move);
    if (cross > LOW * move * Math.sqrt(longest)) {
      const middle = Math.sqrt(u + v + w - shortest - longest);
      angleMost = Math.min(angleMost, angle + (4 * move * ARC) / middle);
    } else low.push(t);
  }
  const doubtful = new Set(low);
  for (let t = 0; t < count; t++) {
    if (leastAngle[t] <= angleMost || leastEdge[t] <= edgeMost) doubtful.add(t);
  }
  return { volume: volume / 6, area: area / 2, doubtful: [...doubtful].sort((a, b) => a - b) };
}
