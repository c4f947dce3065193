/**
 * The stones of a file as pictures show them.
 */
import { vec3 } from "gl-matrix";
import type { HalfSpace } from "../../base/math/half-space.js";
import type { Point3 } from "../../base/math/point.js";
import type { Mesh } from "../../mesh/mesh.js";
import type { ShownStone, StoneBody } from "../stones/shown-stone.js";
import type { FileStone } from "./file-stone.js";

/** Stones that share a mesh share a body. */
export function shownOfFile(stones: readonly FileStone[]): readonly ShownStone[] {
  const bodies = new Map<Mesh, StoneBody>();
  return stones.map(({ group, number, mesh, map, round, gem }): ShownStone => {
    const { name, ...look } = gem;
    const body = bodies.get(mesh) ?? {
      mesh,
      planes: planesOf(mesh),
      width: widthOf(mesh),
      round,
      gem: { name, look },
    };
    bodies.set(mesh, body);
    // Its map is a turn and a move.
    const column = (k: number): Point3 => [map[4 * k], map[4 * k + 1], map[4 * k + 2]];
    return { body, frame: { along: column(0), out: column(2), at: column(3) }, group, number };
  });
}

/** Triangles of one facet lie in planes that differ by rounding alone: unit normals and mm. */
const SAME_PLANE = 1e-6;

/** The planes of a convex body's facets, each once. */
function planesOf({ positions: p, triangles }: Mesh): HalfSpace[] {
  const found: HalfSpace[] = [];
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => p.subarray(3 * triangles[i + k], 3 * triangles[i + k] + 3));
    const normal = vec3.cross([0, 0, 0], vec3.subtract([0, 0, 0], b, a), vec3.subtract([0, 0, 0], c, a));
    if (vec3.length(normal) === 0) continue;
    const [x, y, z] = vec3.normalize(normal, normal);
    const plane: HalfSpace = { normal: [x, y, z], offset: vec3.dot(normal, a) };
    const isKnown = found.some(
      (other) =>
        Math.abs(other.offset - plane.offset) < SAME_PLANE && vec3.distance(other.normal, plane.normal) < SAME_PLANE,
    );
    if (!isKnown) found.push(plane);
  }
  return found;
}

/** Across, mm. */
function widthOf({ positions }: Mesh): number {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 1; i < positions.length; i += 3) {
    low = Math.min(low, positions[i]);
    high = Math.max(high, positions[i]);
  }
  return high - low;
}
