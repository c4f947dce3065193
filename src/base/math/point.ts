/**
 * Points and vectors of the plane and of space, as plain arrays that gl-matrix works on in double precision.
 */

/** A point or vector of the plane. */
export type Point2 = readonly [number, number];

/** A point or vector of space. */
export type Point3 = readonly [number, number, number];
