/**
 * Keeps a field clear of the pattern: the body that is taken from its relief and from its cuts, and the beads left out.
 */
import type { Warn } from "../base/errors.js";
import type { Point3 } from "../base/math/point.js";
import type { Bead } from "../beads/bead.js";
import { distanceToField, type Field } from "../marks/hallmark-field.js";
import type { Mesh } from "../mesh/mesh.js";
import { vertexShells } from "../mesh/shells.js";
import type { Pattern } from "../pattern/laid-out.js";
import { buildHole, type HoleOptions } from "./build-hole.js";

export interface ClearOptions extends Omit<HoleOptions, "reach"> {
  readonly pattern: Pattern;
  /** The bodies of the pattern's holes, reaching so far above the seat, mm. */
  readonly holes: (reach: number) => readonly Mesh[];
  /** How far bodies must reach beyond a surface to intersect truly, mm. */
  readonly clear: number;
}

export interface Clearing {
  readonly body: Mesh;
  /** Holes of the pattern that lie in the field and are not made. */
  readonly lostHoles: number;
}

/** The body that is kept clear. Undefined where the field is not on the seat, or there is no pattern. */
export function clearField(field: Field, { pattern, holes, clear, ...options }: ClearOptions): Clearing | undefined {
  if (field.free === undefined || pattern.bodies.length === 0) return undefined;
  const { wrap } = field.surface;
  // Twice as clear as the cuts' own tools, so that no lid lies in a lid.
  const reach = pattern.height + 2 * clear;
  const body = buildHole(field.free, { ...options, wrap, reach });
  const lostHoles = holes(reach).reduce((sum, hole) => sum + countInside(hole, field), 0);
  return { body, lostHoles };
}

/** Points of a hole's body this near to the seat are its mouth's, mm. */
const AT_MOUTH = 0.01;

/** The pieces of a body whose mouths lie in the field. */
function countInside(body: Mesh, field: Field): number {
  const { of, count } = vertexShells(body);
  const inside = new Uint8Array(count).fill(1);
  body.triangles.forEach((vertex, i) => {
    const point = [...body.positions.subarray(3 * vertex, 3 * vertex + 3)] as unknown as Point3;
    const [, , h] = field.surface.wrap.inverse(...point);
    if (Math.abs(h) <= AT_MOUTH && distanceToField(field, point) > 0) inside[of[Math.floor(i / 3)]] = 0;
  });
  return inside.reduce((sum, one) => sum + one, 0);
}

/** The beads that do not reach into the field. Warns `beads-cleared` with the number of those that do. */
export function clearBeads(beads: readonly Bead[], field: Field | undefined, warn: Warn): readonly Bead[] {
  if (field === undefined || field.surface.name === "bore") return beads;
  const kept = beads.filter(({ centre, radius }) => distanceToField(field, centre) >= radius);
  const lost = beads.length - kept.length;
  if (lost > 0) {
    warn({
      code: "beads-cleared",
      message: `${lost} bead${lost === 1 ? " is" : "s are"} left out where the hallmark's field is; the runs are counted as laid out`,
      path: "hallmark",
      value: lost,
    });
  }
  return kept;
}
