/**
 * Looking at one place of a ring: which way the camera faces there, and what it aims at.
 */
import { AnnuletError } from "../../base/errors.js";
import type { Point3 } from "../../base/math/point.js";
import { radians } from "../../base/units.js";
import type { Mesh } from "../../mesh/mesh.js";
import type { View } from "./camera.js";

/** A place of a ring round the axis z: the ring's outside, or its bore seen from within. */
export interface LookAt {
  /** θ, degrees, counter-clockwise from +x seen from +z: 90 is the top of the ring, 270 the back. */
  readonly angle: number;
  /** Default outside. */
  readonly from?: "outside" | "inside";
}

/** What a camera aims at. */
export interface Aim {
  /** mm */
  readonly centre: Point3;
  /** What is seen at zoom 1 about it, mm. */
  readonly radius: number;
  /** Of the eye from it, mm; the lens's own where undefined. */
  readonly distance?: number;
}

/** Degrees above the ground from which the outside is looked at; the bore is looked at from its middle. Set by eye. */
const ELEVATION = 12;

/** Share of the way from the bore to the bore opposite at which the eye stands. */
const WITHIN = 0.92;

/** The view that faces a place. */
export function facing({ angle, from = "outside" }: LookAt): View {
  if (from === "outside") return { stance: "lying", azimuth: angle, elevation: ELEVATION };
  return { stance: "lying", azimuth: angle + 180, elevation: 0 };
}

/**
 * @param radius the mesh's bounding radius, mm
 * @throws AnnuletError `option-invalid` where there is nothing at the angle, or no bore to look from
 */
export function aimAt(mesh: Mesh, { angle, from = "outside" }: LookAt, radius: number): Aim {
  const there = sectionAt(mesh, radians(angle));
  const opposite = sectionAt(mesh, radians(angle + 180));
  if (there === undefined || (from === "inside" && (opposite === undefined || !(there.inner > 0)))) {
    throw new AnnuletError({
      code: "option-invalid",
      message: "the picture looks at a place where nothing of the mesh is",
      path: "lookAt",
      value: angle,
      allowed: "an angle round the axis z at which there is metal, and from inside a bore round that axis",
    });
  }
  const [cos, sin] = [Math.cos(radians(angle)), Math.sin(radians(angle))];
  const at = (r: number): Point3 => [r * cos, r * sin, (there.low + there.high) / 2];
  if (from === "outside" || opposite === undefined) return { centre: at(there.outer), radius };
  return { centre: at(there.inner), radius: there.inner, distance: WITHIN * (there.inner + opposite.inner) };
}

/** What the half plane at θ meets of the mesh, mm: from the axis, and along it. */
interface Section {
  readonly inner: number;
  readonly outer: number;
  readonly low: number;
  readonly high: number;
}

function sectionAt({ positions, triangles }: Mesh, angle: number): Section | undefined {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  let inner = Number.POSITIVE_INFINITY;
  let [outer, low, high] = [0, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let t = 0; t < triangles.length; t++) {
    const a = 3 * triangles[t];
    const b = 3 * triangles[t % 3 === 2 ? t - 2 : t + 1];
    const sideA = positions[a + 1] * cos - positions[a] * sin;
    const sideB = positions[b + 1] * cos - positions[b] * sin;
    if (sideA > 0 === sideB > 0) continue;
    const share = sideA / (sideA - sideB);
    const out = (k: number) => positions[a + k] + share * (positions[b + k] - positions[a + k]);
    const r = out(0) * cos + out(1) * sin;
    if (!(r > 0)) continue;
    inner = Math.min(inner, r);
    outer = Math.max(outer, r);
    low = Math.min(low, out(2));
    high = Math.max(high, out(2));
  }
  return outer > 0 ? { inner, outer, low, high } : undefined;
}
