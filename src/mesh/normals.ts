/**
 * Vertex normals that stay sharp at creases: corners that meet across an edge share a normal when the faces there turn
 * by at most the crease angle. Faces are weighted by their angle at the vertex (G. Thürmer, C. Wüthrich, Computing
 * vertex normals from polygonal facets, 1998).
 */
import { TURN } from "../base/units.js";
import { buildEdgeTable, nextEdge, previousEdge } from "./edges.js";
import type { Mesh } from "./mesh.js";
import { findRoot, singletons, unite } from "./shells.js";
import { asOneUnit, findTurned, firstUnit, type Turned } from "./turned.js";
import { imagesOn, repeating, unitEdges } from "./unit-edges.js";

/**
 * Edges where the surface turns by more are sharp, radians: 30° (common practice, no source). Arcs cut to a chord tolerance
 * look round, edges of a profile stay edges.
 */
export const DEFAULT_CREASE = Math.PI / 6;

/** A mesh for a viewer, whose vertices are split where their normals differ. There are no texture coordinates. */
export interface Buffers {
  /** x, y, z of each vertex in turn, mm. */
  readonly positions: Float32Array;
  /** Unit normal of each vertex; x, y, z in turn. 0, 0, 0 where all faces at it have no area. */
  readonly normals: Float32Array;
  /** Three vertices of each triangle, counter-clockwise seen from outside. */
  readonly triangles: Uint32Array;
}

/**
 * Splits vertices at creases and gives each its normal. Where the mesh is one unit and its images round the z axis, the unit
 * alone is worked out.
 *
 * @param crease radians, 0 to π: edges that turn by more are sharp. 0 shades flat, π smooths everything.
 */
export function creasedNormals(mesh: Mesh, crease: number): Buffers {
  for (const turned of findTurned(mesh)) {
    const opposite = unitEdges(turned)?.opposite;
    if (opposite !== undefined) return shade(turned, opposite, crease);
  }
  return shade(asOneUnit(mesh), buildEdgeTable(mesh, repeating(mesh.triangles)).opposite, crease);
}

/** Cosine and sine of each image's turn. */
interface Turns {
  readonly cos: Float64Array;
  readonly sin: Float64Array;
}

function turnsOf(units: number): Turns {
  const angles = Float64Array.from({ length: units }, (_, k) => (TURN * k) / units);
  return { cos: angles.map(Math.cos), sin: angles.map(Math.sin) };
}

/** A unit's vertices as they are split, each with its normal in the image that lies in the first unit. */
interface ShadedUnit {
  /** For each corner the number of its vertex. */
  readonly vertexOf: Uint32Array;
  /** For each vertex one of its corners. */
  readonly cornerOf: readonly number[];
  readonly normals: Float64Array;
}

function shade(turned: Turned, opposite: Int32Array, crease: number): Buffers {
  const turns = turnsOf(turned.units);
  const faceNormals = unitFaceNormals(firstUnit(turned));
  const corners = groupCorners(turned, opposite, turnFinder(faceNormals, turns, crease));
  const numbers = numberVertices(corners);
  return allImages(turned, turns, { ...numbers, normals: meanNormals(turned, turns, faceNormals, numbers) });
}

/** Numbers the sets of corners in the order in which they are met. */
function numberVertices(corners: Int32Array): Omit<ShadedUnit, "normals"> {
  const vertexOfRoot = new Int32Array(corners.length).fill(-1);
  const vertexOf = new Uint32Array(corners.length);
  const cornerOf: number[] = [];
  for (let h = 0; h < corners.length; h++) {
    const root = findRoot(corners, h);
    if (vertexOfRoot[root] === -1) vertexOfRoot[root] = cornerOf.push(h) - 1;
    vertexOf[h] = vertexOfRoot[root];
  }
  return { vertexOf, cornerOf };
}

/** Faces are turned back to where they meet the vertex's image in the first unit. */
function meanNormals(
  turned: Turned,
  { cos, sin }: Turns,
  faceNormals: Float64Array,
  { vertexOf, cornerOf }: Omit<ShadedUnit, "normals">,
): Float64Array {
  const unit = firstUnit(turned);
  const normals = new Float64Array(3 * cornerOf.length);
  for (let h = 0; h < vertexOf.length; h++) {
    const weight = cornerAngle(unit, h);
    const face = h - (h % 3);
    const k = turned.unit[h];
    const x = faceNormals[face];
    const y = faceNormals[face + 1];
    const at = 3 * vertexOf[h];
    normals[at] += weight * (x * cos[k] + y * sin[k]);
    normals[at + 1] += weight * (y * cos[k] - x * sin[k]);
    normals[at + 2] += weight * faceNormals[face + 2];
  }
  for (let i = 0; i < normals.length; i += 3) normalise(normals, i);
  return normals;
}

/** The whole mesh: vertices image by image, triangles as they were. */
function allImages(turned: Turned, { cos, sin }: Turns, shaded: ShadedUnit): Buffers {
  const { mesh, units, own, slot, unit } = turned;
  const { vertexOf, cornerOf, normals: n } = shaded;
  const each = cornerOf.length;
  const positions = new Float32Array(3 * units * each);
  const normals = new Float32Array(3 * units * each);
  const triangles = new Uint32Array(units * slot.length);
  for (let k = 0, at = 0; k < units; k++) {
    for (let v = 0; v < each; v++, at += 3) {
      const from = 3 * (slot[cornerOf[v]] + k * own);
      for (let axis = 0; axis < 3; axis++) positions[at + axis] = mesh.positions[from + axis];
      normals[at] = n[3 * v] * cos[k] - n[3 * v + 1] * sin[k];
      normals[at + 1] = n[3 * v] * sin[k] + n[3 * v + 1] * cos[k];
      normals[at + 2] = n[3 * v + 2];
    }
    const first = k * slot.length;
    for (let h = 0; h < slot.length; h++) triangles[first + h] = ((unit[h] + k) % units) * each + vertexOf[h];
  }
  return { positions, triangles, normals };
}

/** Unit normal of each triangle, x, y, z in turn; 0, 0, 0 for a triangle without area. */
export function unitFaceNormals(mesh: Mesh): Float64Array {
  const normals = new Float64Array(mesh.triangles.length);
  for (let t = 0; t < normals.length; t += 3) writeFaceNormal(mesh, t, normals, t);
  return normals;
}

/** Unit normal of one triangle, as `unitFaceNormals` has it. */
export function unitFaceNormal(mesh: Mesh, triangle: number): Float64Array {
  const normal = new Float64Array(3);
  writeFaceNormal(mesh, 3 * triangle, normal, 0);
  return normal;
}

function writeFaceNormal({ positions: p, triangles }: Mesh, t: number, normals: Float64Array, at: number): void {
  const a = 3 * triangles[t];
  const b = 3 * triangles[t + 1];
  const c = 3 * triangles[t + 2];
  const ux = p[b] - p[a];
  const uy = p[b + 1] - p[a + 1];
  const uz = p[b + 2] - p[a + 2];
  const vx = p[c] - p[a];
  const vy = p[c + 1] - p[a + 1];
  const vz = p[c + 2] - p[a + 2];
  normals[at] = uy * vz - uz * vy;
  normals[at + 1] = uz * vx - ux * vz;
  normals[at + 2] = ux * vy - uy * vx;
  normalise(normals, at);
}

/** Union-find over a unit's corners: those that share a vertex normal are in one set. */
function groupCorners(turned: Turned, opposite: Int32Array, turnsFurther: TurnFinder): Int32Array {
  const corners = singletons(opposite.length);
  for (let h = 0; h < opposite.length; h++) {
    const back = opposite[h];
    if (back < h || turnsFurther(h - (h % 3), back - (back % 3), imagesOn(turned, h, back))) continue;
    unite(corners, h, nextEdge(back));
    unite(corners, nextEdge(h), back);
  }
  return corners;
}

/** Cosines this near to the crease's own do not tell on which side of it a turn lies: they carry rounding of some 1e-15. */
const UNSURE = 1e-9;

/** Whether the surface turns by more than the crease from one face to another so many images on, by the places of their normals. */
type TurnFinder = (a: number, b: number, on: number) => boolean;

function turnFinder(normals: Float64Array, { cos, sin }: Turns, crease: number): TurnFinder {
  const cosine = Math.cos(crease);
  return (a, b, on) => {
    const ax = normals[a];
    const ay = normals[a + 1];
    const az = normals[a + 2];
    const bx = normals[b] * cos[on] - normals[b + 1] * sin[on];
    const by = normals[b] * sin[on] + normals[b + 1] * cos[on];
    const bz = normals[b + 2];
    const dot = ax * bx + ay * by + az * bz;
    // Most faces turn by clearly less or more, which the cosine tells. A face without area, whose normal is 0, 0, 0, turns by
    // nothing.
    if (dot > cosine + UNSURE) return false;
    if (dot < cosine - UNSURE && dot !== 0) return true;
    // The turn from its tangent's two parts stays exact where faces are nearly level.
    return Math.atan2(Math.hypot(ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx), dot) > crease;
  };
}

function cornerAngle({ positions: p, triangles }: Mesh, h: number): number {
  const a = 3 * triangles[h];
  const b = 3 * triangles[nextEdge(h)];
  const c = 3 * triangles[previousEdge(h)];
  const ux = p[b] - p[a];
  const uy = p[b + 1] - p[a + 1];
  const uz = p[b + 2] - p[a + 2];
  const vx = p[c] - p[a];
  const vy = p[c + 1] - p[a + 1];
  const vz = p[c + 2] - p[a + 2];
  return Math.atan2(
    Math.sqrt((uy * vz - uz * vy) ** 2 + (uz * vx - ux * vz) ** 2 + (ux * vy - uy * vx) ** 2),
    ux * vx + uy * vy + uz * vz,
  );
}

function normalise(vectors: Float64Array, at: number): void {
  const length = Math.sqrt(vectors[at] ** 2 + vectors[at + 1] ** 2 + vectors[at + 2] ** 2);
  if (length === 0) return;
  for (let k = 0; k < 3; k++) vectors[at + k] /= length;
}
