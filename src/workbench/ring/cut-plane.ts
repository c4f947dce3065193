/**
 * Where the ring is cut: through its axis at an angle, or across the finger.
 */
import { MathUtils, Plane, Vector3 } from "three";

/** A cut of the ring in view. */
export type Cut =
  | { readonly kind: "none" }
  /** Through the finger's axis: degrees, 90 is the ring's top. */
  | { readonly kind: "axis"; readonly angle: number }
  /** Across the finger: mm from the band's middle. */
  | { readonly kind: "across"; readonly at: number };

/**
 * The plane whose positive side stays.
 *
 * Through the axis the half clockwise of the angle goes, across the finger that towards +z: so cuts face who looks at the ring
 * from the front and the right, as it is first shown.
 */
export function planeOf(cut: Cut): Plane | undefined {
  if (cut.kind === "none") return undefined;
  if (cut.kind === "across") return new Plane(new Vector3(0, 0, -1), cut.at);
  const angle = MathUtils.degToRad(cut.angle);
  return new Plane(new Vector3(-Math.sin(angle), Math.cos(angle), 0), 0);
}

/** The cut that runs through a place, of the same kind. */
export function cutThrough(cut: Cut, place: Vector3): Cut {
  if (cut.kind === "across") return { kind: "across", at: place.z };
  if (cut.kind === "none") return cut;
  const angle = MathUtils.radToDeg(Math.atan2(place.y, place.x));
  return { kind: "axis", angle: MathUtils.euclideanModulo(angle, 360) };
}

/** Where the handle that drags a cut stands: outside of the ring, in the plane. */
export function handleOf(cut: Cut, radius: number): Vector3 {
  if (cut.kind === "across") return new Vector3(0, radius, cut.at);
  const angle = MathUtils.degToRad(cut.kind === "axis" ? cut.angle : 90);
  return new Vector3(radius * Math.cos(angle), radius * Math.sin(angle), 0);
}

/** What one step of a key moves a cut by: degrees, mm. */
const STEP = { angle: 1, at: 0.1 } as const;

/** How far from the middle a ring is cut across the finger, mm: wider than any band. */
const WIDEST = 20;

/** The cut some steps on: round and round, or up to where no ring is. */
export function moveCut(cut: Cut, steps: number): Cut {
  if (cut.kind === "axis") {
    return { kind: "axis", angle: MathUtils.euclideanModulo(cut.angle + steps * STEP.angle, 360) };
  }
  if (cut.kind === "none") return cut;
  // In whole tenths, so that a way there and back ends where it began.
  const at = Math.round(cut.at / STEP.at + steps) * STEP.at;
  return { kind: "across", at: MathUtils.clamp(at, -WIDEST, WIDEST) };
}
