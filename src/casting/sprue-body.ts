/**
 * The sprue's body: a cone frustum on a flare, about its own axis.
 *
 * The flare is the fillet between the shank and the plane it stands on: of a cylinder a quarter of a torus.
 */
import { chordCount, flattenSegment, type Line, segmentLength, segmentStart } from "../base/math/curve.js";
import { filletBetween } from "../base/math/fillet.js";
import type { Point2 } from "../base/math/point.js";
import { TURN } from "../base/units.js";
import type { Mesh } from "../mesh/mesh.js";

export interface SprueShape {
  /** mm, of the shank where it meets the plane and at its end. */
  readonly diameter: number;
  readonly end: number;
  /** mm from the plane to the shank's end. */
  readonly length: number;
  /** Radius of the fillet, mm, 0 or more. */
  readonly fillet: number;
}

/**
 * The outline's upper part as (r, z): from the plane, z = 0, along the fillet and up the shank to its end. Undefined where
 * the fillet does not fit on the shank.
 */
export function sprueOutline({ diameter, end, length, fillet }: SprueShape, tolerance: number): Point2[] | undefined {
  const shank: Line = { kind: "line", from: [diameter / 2, 0], to: [end / 2, length] };
  if (fillet === 0) return [shank.from, shank.to];
  // As far out as any fillet of that radius can reach on a cone that leans by less than a right angle.
  const reach = diameter / 2 + fillet * (1 + segmentLength(shank) / length) + Math.abs(end - diameter);
  const found = filletBetween({ kind: "line", from: [reach, 0], to: shank.from }, shank, fillet);
  if (found === undefined || found.trimSecond >= segmentLength(shank)) return undefined;
  return [segmentStart(found.arc), ...flattenSegment(found.arc, tolerance), shank.to];
}

/**
 * The outline turned about z, closed by flat ends, with a straight foot below the plane.
 *
 * @param outline (r, z) from the foot's rim upwards
 * @param foot how far the foot reaches below the plane, mm, above 0
 * @param tolerance largest chordal deviation, mm
 */
export function sprueBody(outline: readonly Point2[], foot: number, tolerance: number): Mesh {
  const rings: readonly Point2[] = [[outline[0][0], -foot], ...outline];
  const widest = Math.max(...rings.map(([r]) => r));
  const around = Math.max(LEAST_AROUND, chordCount(widest, TURN, tolerance));
  const positions = new Float64Array(3 * (around * rings.length + 2));
  const triangles: number[] = [];
  const [bottom, top] = [around * rings.length, around * rings.length + 1];
  positions.set([0, 0, rings[0][1]], 3 * bottom);
  positions.set([0, 0, rings[rings.length - 1][1]], 3 * top);
  const last = (rings.length - 1) * around;
  for (let i = 0; i < around; i++) {
    const angle = (TURN * i) / around;
    const next = (i + 1) % around;
    rings.forEach(([r, z], j) => {
      positions.set([r * Math.cos(angle), r * Math.sin(angle), z], 3 * (j * around + i));
      if (j + 1 === rings.length) return;
      const [a, b] = [j * around + i, j * around + next];
      triangles.push(a, b, b + around, a, b + around, a + around);
    });
    triangles.push(bottom, next, i, top, last + i, last + next);
  }
  return { positions, triangles: Uint32Array.from(triangles) };
}

/** Sides of the thinnest sprue: fewer would not look round. */
const LEAST_AROUND = 24;

/** The radius of the outline where it is widest: what the sprue covers of the band. */
export function sprueReach(outline: readonly Point2[]): number {
  return outline[0][0];
}
