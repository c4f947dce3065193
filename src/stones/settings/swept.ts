/**
 * A cross-section swept along a row of stones: grooves, raised walls, bright cuts. All sections have as many points.
 */
import type { Point2 } from "../../base/math/point.js";
import type { Mesh } from "../../mesh/mesh.js";
import { triangulatePolygon } from "../../mesh/triangulate.js";
import { type Frame, intoSpace } from "../frame.js";

/** One section of a sweep, (y, z) in a frame; counter-clockwise seen against the frame's x. */
export interface Section {
  readonly frame: Frame;
  readonly outline: readonly Point2[];
}

/** The body through the sections; closed in itself, or with flat ends. */
export function sweepSections(sections: readonly Section[], closed: boolean): Mesh {
  const count = sections[0].outline.length;
  const positions = sections.flatMap(({ frame, outline }) => outline.flatMap(([y, z]) => intoSpace(frame, [0, y, z])));
  const triangles: number[] = [];
  const last = closed ? sections.length : sections.length - 1;
  for (let s = 0; s < last; s++) {
    const [here, next] = [s * count, ((s + 1) % sections.length) * count];
    for (let i = 0; i < count; i++) {
      const j = (i + 1) % count;
      triangles.push(here + i, here + j, next + j, here + i, next + j, next + i);
    }
  }
  if (!closed) {
    const start = (sections.length - 1) * count;
    const ends = triangulatePolygon([sections[0].outline]);
    const far = triangulatePolygon([sections[sections.length - 1].outline]);
    for (let i = 0; i < ends.length; i += 3) triangles.push(ends[i], ends[i + 2], ends[i + 1]);
    for (let i = 0; i < far.length; i += 3) triangles.push(start + far[i], start + far[i + 1], start + far[i + 2]);
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}
