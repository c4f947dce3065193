/**
 * Drops specks from a united mesh, and fills what is sealed in.
 *
 * Specks are chips left where faces of two parts nearly coincide, and hollows between the facets of parts that meet, where
 * the true surfaces leave none. A larger hollow sealed in, between beads and what they stand on, is filled too: nothing
 * could be printed, cast or cleaned in it.
 */
import type { Point3 } from "../math/point.js";
import type { Mesh } from "../mesh/mesh.js";
import { vertexShells } from "../mesh/shells.js";
import { volumesByLabel } from "../mesh/volume.js";

/** Shells thinner than this are specks, mm: the default chordal tolerance, within which facets decide, not the design. */
const THIN = 0.01;

/** A sealed hollow that was filled. */
export interface Hollow {
  /** mm³ */
  readonly volume: number;
  /** A point of its surface. */
  readonly place: Point3;
}

export interface Cleaned {
  /** Without the shells that were dropped; vertices stay. */
  readonly mesh: Mesh;
  /** Hollows that were filled and are no specks. */
  readonly hollows: readonly Hollow[];
}

/** Drops shells whose mean thickness, twice their volume over their area, is at most 10 µm, and all that enclose a hollow. */
export function dropSpecks(mesh: Mesh): Cleaned {
  const shells = vertexShells(mesh);
  if (shells.count < 2) return { mesh, hollows: [] };
  const volumes = volumesByLabel(mesh, shells.of, shells.count);
  const areas = areasByLabel(mesh, shells.of, shells.count);
  const thick = (shell: number) => 2 * Math.abs(volumes[shell]) > THIN * areas[shell];
  const hollows = new Map<number, Hollow>();
  const kept: number[] = [];
  shells.of.forEach((shell, t) => {
    const corners = mesh.triangles.subarray(3 * t, 3 * t + 3);
    if (thick(shell) && volumes[shell] > 0) kept.push(...corners);
    else if (thick(shell) && !hollows.has(shell)) {
      hollows.set(shell, { volume: -volumes[shell], place: pointOf(mesh, corners[0]) });
    }
  });
  return { mesh: { positions: mesh.positions, triangles: Uint32Array.from(kept) }, hollows: [...hollows.values()] };
}

function pointOf({ positions }: Mesh, vertex: number): Point3 {
  return [positions[3 * vertex], positions[3 * vertex + 1], positions[3 * vertex + 2]];
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
