/**
 * Corner normals for the triangles that are seen.
 *
 * A corner that lies on a known surface takes that surface's normal there, unless its facet leans further from it than a
 * chord can; of several surfaces it takes the one that its facet leans from least. Any other takes the mean of the faces
 * round its vertex that turn from its own by at most the crease angle, weighed by their angle there (G. Thürmer,
 * C. Wüthrich, Computing vertex normals from polygonal facets, 1998). Where that comes near to a known surface it runs into
 * it, so it is the surface's. Slivers that unions leave have no direction worth the name: they lend none and borrow their
 * neighbours', over creases too.
 *
 * `creasedNormals` of the mesh folder splits vertices for files and viewers; for pictures that would be work on triangles
 * which nobody sees.
 */
import type { Mesh } from "../../mesh/mesh.js";
import type { KnownAtVertex } from "./known/known-normals.js";

/** Triangles less high than this over their longest side are slivers, mm: about what float32 rounds a ring's points by. */
const SLIVER = 5e-6;

/** What the normals of any view are made from. */
export interface MeshFaces {
  /** Unit normal of each face, three numbers a face. */
  readonly normals: Float32Array;
  /** Angle at each corner, radians; 0 for slivers. */
  readonly angles: Float32Array;
  /** The corners at vertex v are around[starts[v]] up to around[starts[v + 1] - 1]. */
  readonly starts: Uint32Array;
  readonly around: Uint32Array;
}

export function facesOf(mesh: Mesh): MeshFaces {
  return { ...measureFaces(mesh), ...cornersAtVertices(mesh.triangles, mesh.positions.length / 3) };
}

/** A mean of faces nearer than this to a known surface runs into it: 12°, chosen. */
const RUNS_INTO = Math.cos((12 * Math.PI) / 180);

/** What the normals of one view are made by. */
export interface CornerOptions {
  /** One entry a triangle: 1 where it is seen. */
  readonly seen: Uint8Array;
  /** Radians. */
  readonly crease: number;
  /** What is known of a vertex. Default nothing of any. */
  readonly known?: (vertex: number) => KnownAtVertex;
}

/** Three normals a triangle, nine numbers each, of unit length; zeros for triangles that are not seen. */
export function cornerNormals(mesh: Mesh, faces: MeshFaces, { seen, crease, known }: CornerOptions): Float32Array {
  const { triangles } = mesh;
  const { normals: facing, angles } = faces;
  const normals = new Float32Array(triangles.length * 3);
  const mean = meanOfFaces(mesh, faces, Math.cos(crease));
  for (let corner = 0; corner < triangles.length; corner++) {
    const own = Math.floor(corner / 3);
    if (seen[own] === 0) {
      corner += 2;
      continue;
    }
    const at = normals.subarray(3 * corner, 3 * corner + 3);
    at.set(facing.subarray(3 * own, 3 * own + 3));
    const surfaces = known?.(triangles[corner]);
    if (surfaces !== undefined && angles[corner] > 0 && takeKnown(surfaces, at)) continue;
    mean(corner, at);
    if (surfaces !== undefined) takeKnown(surfaces, at, RUNS_INTO);
  }
  return normals;
}

/** Makes a direction that of the surface nearest to it, if one is near enough; tells whether. */
function takeKnown(surfaces: KnownAtVertex, at: Float32Array, least?: number): boolean {
  let [best, nearest] = [-1, -1];
  for (let i = 0; i < surfaces.length; i += 4) {
    const cosine = surfaces[i] * at[0] + surfaces[i + 1] * at[1] + surfaces[i + 2] * at[2];
    if (cosine < (least ?? surfaces[i + 3]) || cosine < nearest) continue;
    best = i;
    nearest = cosine;
  }
  if (best < 0) return false;
  at[0] = surfaces[best];
  at[1] = surfaces[best + 1];
  at[2] = surfaces[best + 2];
  return true;
}

/** Writes the mean for a corner; leaves what is there where there is none. */
function meanOfFaces({ triangles }: Mesh, { normals: facing, angles, starts, around }: MeshFaces, least: number) {
  return (corner: number, at: Float32Array): void => {
    const vertex = triangles[corner];
    const [fx, fy, fz] = at;
    const limit = angles[corner] > 0 ? least : -1;
    let x = 0;
    let y = 0;
    let z = 0;
    for (let k = starts[vertex]; k < starts[vertex + 1]; k++) {
      const other = 3 * ((around[k] / 3) | 0);
      if (fx * facing[other] + fy * facing[other + 1] + fz * facing[other + 2] < limit) continue;
      const weight = angles[around[k]];
      x += facing[other] * weight;
      y += facing[other + 1] * weight;
      z += facing[other + 2] * weight;
    }
    const length = Math.sqrt(x * x + y * y + z * z);
    if (!(length > 0)) return;
    at[0] = x / length;
    at[1] = y / length;
    at[2] = z / length;
  };
}

function measureFaces({ positions, triangles }: Mesh) {
  const normals = new Float32Array(triangles.length);
  const angles = new Float32Array(triangles.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t] * 3;
    const b = triangles[t + 1] * 3;
    const c = triangles[t + 2] * 3;
    const ux = positions[b] - positions[a];
    const uy = positions[b + 1] - positions[a + 1];
    const uz = positions[b + 2] - positions[a + 2];
    const vx = positions[c] - positions[a];
    const vy = positions[c + 1] - positions[a + 1];
    const vz = positions[c + 2] - positions[a + 2];
    const x = uy * vz - uz * vy;
    const y = uz * vx - ux * vz;
    const z = ux * vy - uy * vx;
    const doubled = Math.sqrt(x * x + y * y + z * z);
    if (!(doubled > 0)) continue;
    const scale = 1 / doubled;
    normals[t] = x * scale;
    normals[t + 1] = y * scale;
    normals[t + 2] = z * scale;
    const uu = ux * ux + uy * uy + uz * uz;
    const vv = vx * vx + vy * vy + vz * vz;
    const uv = ux * vx + uy * vy + uz * vz;
    if (doubled < SLIVER * Math.sqrt(Math.max(uu, vv, uu + vv - 2 * uv))) continue;
    const atA = arcCosine(uv / Math.sqrt(uu * vv));
    const atB = arcCosine((uu - uv) / Math.sqrt(uu * (uu + vv - 2 * uv)));
    angles[t] = atA;
    angles[t + 1] = atB;
    angles[t + 2] = Math.max(0, Math.PI - atA - atB);
  }
  return { normals, angles };
}

/** Within 7e-5 (M. Abramowitz, I. Stegun, Handbook of mathematical functions, 4.4.45): enough to weigh by. */
function arcCosine(cosine: number): number {
  const x = Math.min(1, Math.abs(cosine));
  const angle = Math.sqrt(1 - x) * (1.5707288 + x * (-0.2121144 + x * (0.074261 - x * 0.0187293)));
  return cosine < 0 ? Math.PI - angle : angle;
}

function cornersAtVertices(triangles: Uint32Array, vertices: number) {
  const starts = new Uint32Array(vertices + 1);
  for (let corner = 0; corner < triangles.length; corner++) starts[triangles[corner] + 1]++;
  for (let v = 0; v < vertices; v++) starts[v + 1] += starts[v];
  const next = starts.slice(0, vertices);
  const around = new Uint32Array(triangles.length);
  for (let corner = 0; corner < triangles.length; corner++) around[next[triangles[corner]]++] = corner;
  return { starts, around };
}
