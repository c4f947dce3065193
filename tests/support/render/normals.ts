/**
 * Corner normals that are smooth over shallow edges and sharp over creases.
 *
 * Each corner takes the area-weighted mean of the faces around its vertex that lie within the crease angle of its own
 * face. Area weighting keeps the slivers that unions leave from showing.
 */
import type { Mesh } from "../../../src/mesh/mesh.js";

/** Three normals a triangle, nine numbers each, of unit length. */
export function cornerNormals(mesh: Mesh, creaseDegrees: number): Float32Array {
  const { positions, triangles } = mesh;
  const faces = faceNormals(mesh);
  const { starts, around } = facesAroundVertices(triangles, positions.length / 3);
  const limit = Math.cos((creaseDegrees * Math.PI) / 180);
  const normals = new Float32Array(triangles.length * 3);
  for (let corner = 0; corner < triangles.length; corner++) {
    const face = Math.floor(corner / 3) * 4;
    const vertex = triangles[corner];
    let x = 0;
    let y = 0;
    let z = 0;
    for (let k = starts[vertex]; k < starts[vertex + 1]; k++) {
      const other = around[k] * 4;
      const cosine =
        faces[face] * faces[other] + faces[face + 1] * faces[other + 1] + faces[face + 2] * faces[other + 2];
      if (cosine < limit) continue;
      const area = faces[other + 3];
      x += faces[other] * area;
      y += faces[other + 1] * area;
      z += faces[other + 2] * area;
    }
    const length = Math.hypot(x, y, z) || 1;
    normals[corner * 3] = x / length;
    normals[corner * 3 + 1] = y / length;
    normals[corner * 3 + 2] = z / length;
  }
  return normals;
}

/** Unit normal and doubled area of each face, four numbers a face. */
function faceNormals({ positions, triangles }: Mesh): Float64Array {
  const faces = new Float64Array((triangles.length / 3) * 4);
  for (let face = 0; face < triangles.length / 3; face++) {
    const a = triangles[face * 3] * 3;
    const b = triangles[face * 3 + 1] * 3;
    const c = triangles[face * 3 + 2] * 3;
    const ux = positions[b] - positions[a];
    const uy = positions[b + 1] - positions[a + 1];
    const uz = positions[b + 2] - positions[a + 2];
    const vx = positions[c] - positions[a];
    const vy = positions[c + 1] - positions[a + 1];
    const vz = positions[c + 2] - positions[a + 2];
    const x = uy * vz - uz * vy;
    const y = uz * vx - ux * vz;
    const z = ux * vy - uy * vx;
    const doubled = Math.hypot(x, y, z);
    const scale = doubled > 0 ? 1 / doubled : 0;
    faces.set([x * scale, y * scale, z * scale, doubled], face * 4);
  }
  return faces;
}

/** The faces at vertex v are around[starts[v]] up to around[starts[v + 1] - 1]. */
function facesAroundVertices(triangles: Uint32Array, vertices: number): { starts: Uint32Array; around: Uint32Array } {
  const starts = new Uint32Array(vertices + 1);
  for (const vertex of triangles) starts[vertex + 1]++;
  for (let v = 0; v < vertices; v++) starts[v + 1] += starts[v];
  const next = starts.slice(0, vertices);
  const around = new Uint32Array(triangles.length);
  for (let corner = 0; corner < triangles.length; corner++) around[next[triangles[corner]]++] = Math.floor(corner / 3);
  return { starts, around };
}
