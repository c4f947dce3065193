/**
 * Drops specks from a united mesh: chips left where faces of two parts nearly coincide, and hollows sealed in between
 * the facets of parts that meet, where the true surfaces leave none.
 */
import type { Mesh } from "../mesh/mesh.js";
import { vertexShells } from "../mesh/shells.js";
import { volumesByLabel } from "../mesh/volume.js";

/** Shells thinner than this are specks, mm: the default chordal tolerance, within which facets decide, not the design. */
const THIN = 0.01;

/** The mesh without shells whose mean thickness, twice their volume over their area, is at most 10 µm; vertices stay. */
export function dropSpecks(mesh: Mesh): Mesh {
  const shells = vertexShells(mesh);
  if (shells.count < 2) return mesh;
  const volumes = volumesByLabel(mesh, shells.of, shells.count);
  const areas = areasByLabel(mesh, shells.of, shells.count);
  const kept: number[] = [];
  shells.of.forEach((shell, t) => {
    if (2 * Math.abs(volumes[shell]) > THIN * areas[shell]) kept.push(...mesh.triangles.subarray(3 * t, 3 * t + 3));
  });
  return { positions: mesh.positions, triangles: Uint32Array.from(kept) };
}

function areasByLabel({ positions: p, triangles }: Mesh, label: Int32Array, count: number): Float64Array {
  const areas = new Float64Array(count);
  label.forEach((shell, t) => {
    const [a, b, c] = [3 * triangles[3 * t], 3 * triangles[3 * t + 1], 3 * triangles[3 * t + 2]];
    const [ux, uy, uz] = [p[b] - p[a], p[b + 1] - p[a + 1], p[b + 2] - p[a + 2]];
    const [vx, vy, vz] = [p[c] - p[a], p[c + 1] - p[a + 1], p[c + 2] - p[a + 2]];
    areas[shell] += Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx) / 2;
  });
  return areas;
}
