/** Where a half plane from the finger's axis cuts a closed mesh: measured on the triangles alone. */
import type { Mesh } from "../../src/mesh/mesh.js";

export interface HalfPlaneSection {
  /** Area of the cut, mm². */
  readonly area: number;
  /** ∬ r dA over it, mm³: the volume for each radian. */
  readonly moment: number;
  /** From w to w and from r to r, mm. */
  readonly w: readonly [low: number, high: number];
  readonly r: readonly [low: number, high: number];
}

/** @param angle θ, radians, such that no vertex lies in the plane */
export function halfPlaneSection({ positions, triangles }: Mesh, angle: number): HalfPlaneSection {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const at = (vertex: number) => {
    const [x, y, z] = positions.subarray(3 * vertex, 3 * vertex + 3);
    return { off: y * cos - x * sin, r: x * cos + y * sin, w: z };
  };
  let [area, moment] = [0, 0];
  const [w, r] = [
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
  ] as [[number, number], [number, number]];
  for (let i = 0; i < triangles.length; i += 3) {
    const corners = [0, 1, 2].map((k) => at(triangles[i + k]));
    const cut = corners.flatMap((a, k) => {
      const b = corners[(k + 1) % 3];
      if (a.off < 0 === b.off < 0) return [];
      const t = a.off / (a.off - b.off);
      return [{ r: a.r + t * (b.r - a.r), w: a.w + t * (b.w - a.w), leaves: a.off < 0 }];
    });
    if (cut.length !== 2 || cut[0].r < 0) continue;
    // The outside lies to the right of the way from where the border leaves the near side to where it comes back.
    const [from, to] = cut[0].leaves ? [cut[1], cut[0]] : [cut[0], cut[1]];
    area += (from.r * to.w - to.r * from.w) / 2;
    moment += ((to.w - from.w) * (from.r * from.r + from.r * to.r + to.r * to.r)) / 6;
    for (const point of cut) {
      w[0] = Math.min(w[0], point.w);
      w[1] = Math.max(w[1], point.w);
      r[0] = Math.min(r[0], point.r);
      r[1] = Math.max(r[1], point.r);
    }
  }
  return { area: Math.abs(area), moment: Math.abs(moment), w, r };
}
