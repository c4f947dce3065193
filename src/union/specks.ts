/**
 * Drops specks from a united mesh, and fills what is sealed in.
 *
 * Specks are chips left where faces of two parts nearly coincide, and hollows between the facets of parts that meet, where
 * the true surfaces leave none. A larger hollow sealed in, between beads and what they stand on, is filled too: nothing
 * could be printed, cast or cleaned in it.
 */
import type { Point3 } from "../base/math/point.js";
import type { Mesh } from "../mesh/mesh.js";
import { vertexShells } from "../mesh/shells.js";
import { triangleAreas } from "../mesh/triangle-areas.js";
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
  const thick = Array.from(volumes, (volume, shell) => 2 * Math.abs(volume) > THIN * areas[shell]);
  const hollows = new Map<number, Hollow>();
  const kept = new Uint32Array(mesh.triangles.length);
  let length = 0;
  for (let t = 0; t < shells.of.length; t++) {
    const shell = shells.of[t];
    if (!thick[shell]) continue;
    if (volumes[shell] > 0) {
      for (let k = 0; k < 3; k++) kept[length++] = mesh.triangles[3 * t + k];
    } else if (!hollows.has(shell)) {
      hollows.set(shell, { volume: -volumes[shell], place: pointOf(mesh, mesh.triangles[3 * t]) });
    }
  }
  return { mesh: { positions: mesh.positions, triangles: kept.slice(0, length) }, hollows: [...hollows.values()] };
}

function pointOf({ positions }: Mesh, vertex: number): Point3 {
  return [positions[3 * vertex], positions[3 * vertex + 1], positions[3 * vertex + 2]];
}

function areasByLabel(mesh: Mesh, label: Int32Array, count: number): Float64Array {
  const areas = new Float64Array(count);
  triangleAreas(mesh).forEach((area, t) => {
    areas[label[t]] += area;
  });
  return areas;
}
