/**
 * Vertex normals that stay sharp at creases: corners that meet across an edge share a normal when the faces there turn
 * by at most the crease angle. Faces are weighted by their angle at the vertex (G. Thürmer, C. Wüthrich, Computing
 * vertex normals from polygonal facets, 1998).
 */
import { buildEdgeTable, nextEdge, previousEdge } from "./edges.js";
import type { Mesh } from "./mesh.js";
import { findRoot, singletons, unite } from "./shells.js";

/**
 * Edges where the surface turns by more are sharp, radians: 30° (common practice, no source). Arcs cut to a chord tolerance
 * look round, edges of a profile stay edges.
 */
export const DEFAULT_CREASE = Math.PI / 6;

/** A mesh whose vertices are split where their normals differ. */
export interface ShadedMesh extends Mesh {
  /** Unit normal of each vertex, x, y, z in turn. 0, 0, 0 where all faces at it have no area. */
  readonly normals: Float64Array;
}

/**
 * Splits vertices at creases and gives each its normal.
 *
 * @param crease radians, 0 to π: edges that turn by more are sharp. 0 shades flat, π smooths everything.
 */
export function creasedNormals(mesh: Mesh, crease: number): ShadedMesh {
  const { positions, triangles } = mesh;
  const faceNormals = unitFaceNormals(mesh);
  const corners = groupCorners(mesh, faceNormals, crease);
  const vertexOfRoot = new Int32Array(triangles.length).fill(-1);
  const shadedTriangles = new Uint32Array(triangles.length);
  const shadedPositions = new Float64Array(3 * triangles.length);
  const normals = new Float64Array(3 * triangles.length);
  let vertices = 0;
  for (let h = 0; h < triangles.length; h++) {
    const root = findRoot(corners, h);
    if (vertexOfRoot[root] === -1) {
      vertexOfRoot[root] = vertices;
      for (let k = 0; k < 3; k++) shadedPositions[3 * vertices + k] = positions[3 * triangles[h] + k];
      vertices++;
    }
    const vertex = vertexOfRoot[root];
    shadedTriangles[h] = vertex;
    const weight = cornerAngle(mesh, h);
    const face = 3 * Math.floor(h / 3);
    for (let k = 0; k < 3; k++) normals[3 * vertex + k] += weight * faceNormals[face + k];
  }
  for (let i = 0; i < 3 * vertices; i += 3) normalise(normals, i);
  return {
    positions: shadedPositions.slice(0, 3 * vertices),
    triangles: shadedTriangles,
    normals: normals.slice(0, 3 * vertices),
  };
}

/** Unit normal of each triangle, x, y, z in turn; 0, 0, 0 for a triangle without area. */
export function unitFaceNormals(mesh: Mesh): Float64Array {
  const { positions: p, triangles } = mesh;
  const normals = new Float64Array(triangles.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t];
    const b = 3 * triangles[t + 1];
    const c = 3 * triangles[t + 2];
    const ux = p[b] - p[a];
    const uy = p[b + 1] - p[a + 1];
    const uz = p[b + 2] - p[a + 2];
    const vx = p[c] - p[a];
    const vy = p[c + 1] - p[a + 1];
    const vz = p[c + 2] - p[a + 2];
    normals[t] = uy * vz - uz * vy;
    normals[t + 1] = uz * vx - ux * vz;
    normals[t + 2] = ux * vy - uy * vx;
    normalise(normals, t);
  }
  return normals;
}

/** Union-find over corners: those that share a vertex normal are in one set. */
function groupCorners(mesh: Mesh, faceNormals: Float64Array, crease: number): Int32Array {
  const { triangles } = mesh;
  const skip = new Uint8Array(triangles.length / 3);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t], triangles[t + 1], triangles[t + 2]];
    if (a === b || b === c || c === a) skip[t / 3] = 1;
  }
  const { opposite } = buildEdgeTable(mesh, skip);
  const corners = singletons(triangles.length);
  const turnsFurther = turnFinder(faceNormals, crease);
  for (let h = 0; h < opposite.length; h++) {
    const back = opposite[h];
    if (back < h || turnsFurther(h - (h % 3), back - (back % 3))) continue;
    unite(corners, h, nextEdge(back));
    unite(corners, nextEdge(h), back);
  }
  return corners;
}

/** Cosines this near to the crease's own do not tell on which side of it a turn lies: they carry rounding of some 1e-15. */
const UNSURE = 1e-9;

/** Whether the surface turns by more than the crease from one face to another, by the places of their normals. */
function turnFinder(normals: Float64Array, crease: number): (a: number, b: number) => boolean {
  const cosine = Math.cos(crease);
  return (a, b) => {
    const ax = normals[a];
    const ay = normals[a + 1];
    const az = normals[a + 2];
    const bx = normals[b];
    const by = normals[b + 1];
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
