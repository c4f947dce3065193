/**
 * A surface that the mesh's facets are chords of: which way it faces is known without asking the facets.
 */

/**
 * Takes a surface's outward unit normal at a point, and the most, in radians, that a facet may lean from it and still be a
 * chord of it.
 */
export type Found = (nx: number, ny: number, nz: number, lean: number) => void;

/** Tells of each surface that the point lies on; mm. */
export type KnownSurface = (x: number, y: number, z: number, found: Found) => void;

/** A facet leans by half the angle of its chord; along the band and across it these add up. Chosen: half as much again. */
const ALLOWED = 1.5;

/** Let pass beside it, radians: what rounding turns a small facet by. Chosen. */
const SPARE = 0.02;

/** No facet that leans by more is a chord, radians: 40°, chosen, less than a chamfer's 45°. */
const MOST = (40 * Math.PI) / 180;

/**
 * The most that a facet may lean from a surface, radians.
 *
 * @param radii of its two curvatures, mm; infinite where it is straight
 * @param tolerance by how much chords stand off, mm
 */
export function mostLean(radii: readonly [number, number], tolerance: number): number {
  // A chord of sagitta s on a circle of radius r: half its angle is acos(1 − s / r) (any handbook of geometry).
  const [a, b] = radii.map((radius) => Math.acos(Math.max(0, 1 - tolerance / radius)));
  return Math.min(MOST, ALLOWED * (a + b) + SPARE);
}

/** Points within the tolerance of a surface are on it; and a little more, mm: what tidying a union moves points by. */
export function reachOf(tolerance: number): number {
  return 1.05 * tolerance + 1e-3;
}

/** What the first surface tells of a point; where it tells nothing, what the second one does. */
export function firstOf(first: KnownSurface, second: KnownSurface): KnownSurface {
  return (x, y, z, found) => {
    let told = false;
    first(x, y, z, (...normal) => {
      told = true;
      found(...normal);
    });
    if (!told) second(x, y, z, found);
  };
}
