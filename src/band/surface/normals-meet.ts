/**
 * Where normals of a surface's line meet: over its valleys, inside its ridges. What stands along them runs into each other
 * from there on. Looked at by even normals, straight lines as they are.
 */
import type { SurfaceLine } from "./surface.js";

/** Normals looked at across a line (chosen: 0.02 mm apart on what is 5 mm long). */
const NORMALS = 256;

/** Whether neighbouring normals meet before a height, mm; below the surface where it is negative. */
export function normalsMeet(line: SurfaceLine, to: number): boolean {
  const at = (i: number) => line.reach * ((2 * i) / NORMALS - 1);
  let [foot, top] = [line.point(at(0), 0), line.point(at(0), to)];
  for (let i = 1; i <= NORMALS; i++) {
    const [nextFoot, nextTop] = [line.point(at(i), 0), line.point(at(i), to)];
    const along = (nextTop[0] - top[0]) * (nextFoot[0] - foot[0]) + (nextTop[1] - top[1]) * (nextFoot[1] - foot[1]);
    if (along <= 0) return true;
    [foot, top] = [nextFoot, nextTop];
  }
  return false;
}

/** The heights, or depths where `side` is −1, below which normals meet no other one. */
export interface Meetings {
  /** The least of all, mm; infinite where none meet. */
  readonly least: number;
  /** That of the normal at v, mm. */
  readonly at: (v: number) => number;
}

/** Where the normals over a span of a line, from v to v, meet each other. */
export function meetings(line: SurfaceLine, [low, high]: readonly [number, number], side: 1 | -1): Meetings {
  const rays = Array.from({ length: NORMALS + 1 }, (_, i) => {
    const v = low + ((high - low) * i) / NORMALS;
    const [w, r] = line.normal(v);
    return { foot: line.point(v, 0), way: [side * w, side * r] as const };
  });
  const heights = new Float64Array(rays.length).fill(Number.POSITIVE_INFINITY);
  rays.forEach(({ foot, way }, i) => {
    for (let j = i + 1; j < rays.length; j++) {
      const other = rays[j];
      const across = way[0] * other.way[1] - way[1] * other.way[0];
      const [dw, dr] = [other.foot[0] - foot[0], other.foot[1] - foot[1]];
      const own = (dw * other.way[1] - dr * other.way[0]) / across;
      const its = (dw * way[1] - dr * way[0]) / across;
      if (!(own > 0 && its > 0)) continue;
      heights[i] = Math.min(heights[i], Math.max(own, its));
      heights[j] = Math.min(heights[j], Math.max(own, its));
    }
  });
  const at = (v: number) => {
    const place = Math.min(NORMALS, Math.max(0, (NORMALS * (v - low)) / (high - low)));
    return Math.min(heights[Math.floor(place)], heights[Math.ceil(place)]);
  };
  return { least: Math.min(...heights), at };
}
