/**
 * Bodies of stacked outlines: one convex outline at several levels, each with as many points as the others, so that neighbouring
 * levels are joined point by point. Both ends are flat.
 */
import type { Point2 } from "../../base/math/point.js";
import type { Mesh } from "../../mesh/mesh.js";

/** An outline at a height; counter-clockwise seen from above. */
export interface Level {
  /** mm */
  readonly z: number;
  readonly outline: readonly Point2[];
}

/** The closed body between the first level and the last, which rise; two may lie at one height where a ledge is meant. */
export function stackOutlines(levels: readonly Level[]): Mesh {
  const count = levels[0].outline.length;
  if (levels.length < 2 || levels.some(({ outline }) => outline.length !== count)) {
    throw new Error("stacked outlines have as many points at each of two levels or more");
  }
  const positions: number[] = [];
  for (const { z, outline } of levels) for (const [x, y] of outline) positions.push(x, y, z);
  const triangles: number[] = [];
  for (let level = 0; level + 1 < levels.length; level++) {
    for (let i = 0; i < count; i++) {
      const [a, b] = [level * count + i, level * count + ((i + 1) % count)];
      triangles.push(a, b, b + count, a, b + count, a + count);
    }
  }
  const top = (levels.length - 1) * count;
  for (const [start, level, up] of [
    [0, levels[0], false],
    [top, levels[levels.length - 1], true],
  ] as const) {
    const [x, y] = middleOf(level.outline);
    const middle = positions.push(x, y, level.z) / 3 - 1;
    for (let i = 0; i < count; i++) {
      const [a, b] = [start + i, start + ((i + 1) % count)];
      triangles.push(middle, ...(up ? [a, b] : [b, a]));
    }
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

/** The mean of an outline's corners: inside of a convex one. */
function middleOf(outline: readonly Point2[]): Point2 {
  const sum = (k: 0 | 1) => outline.reduce((total, point) => total + point[k], 0);
  return [sum(0) / outline.length, sum(1) / outline.length];
}
